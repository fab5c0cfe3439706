package dev.tankwright.scenario.key;

import static dev.tankwright.scenario.block.KeyBuilder.key;

import dev.tankwright.controller.board.Parameter;
import dev.tankwright.controller.board.Unit;
import dev.tankwright.scenario.block.Key;
import dev.tankwright.scenario.block.KeyBlock;
import dev.tankwright.scenario.block.KeyBuilder;
import dev.tankwright.scenario.block.KeyType;
import dev.tankwright.scenario.block.Origin;
import dev.tankwright.scenario.quantity.Dimension;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/** Keys under {@code controller}: the controller's own table of parameters, and one beside it. */
public final class ControllerKeys {
  /** Whether times may be shorter than any device can run with. */
  public static final Key SHORT_TIME =
      key(
              "short-time",
              KeyType.words(List.of("on", "off")),
              Origin.OURS,
              "lifts the lower end of every time to 1 ms, for proofs about logic only")
          .otherwise("off")
          .make();

  /** What parameters were called before. */
  private static final Map<Parameter, String> FORMER =
      Map.of(Parameter.CONTROL_MODE, "regulation", Parameter.HYSTERESIS, "dead-band");

  private static final Map<Parameter, Key> PARAMETERS = parameters();

  /** All of them. */
  public static final KeyBlock BLOCK = block();

  private ControllerKeys() {}

  /** The key of a parameter. */
  public static Key of(Parameter parameter) {
    return PARAMETERS.get(parameter);
  }

  /** In how many steps a unit of a file comes for the controller's unit. */
  public static int perUnit(Unit unit) {
    return switch (unit) {
      case MILLI_CELSIUS, MILLI_KELVIN, MILLISECONDS, PERMILLE, MILLI_OHM -> KeyType.MILLI;
      case HERTZ, NUMBER, SECONDS, WATT -> 1;
    };
  }

  /** A value in the controller's unit as one in a file's, in digits. */
  public static String inFile(Unit unit, int value) {
    return new BigDecimal(value).divide(new BigDecimal(perUnit(unit))).toPlainString();
  }

  private static Dimension dimension(Unit unit) {
    return switch (unit) {
      case MILLI_CELSIUS -> Dimension.TEMPERATURE;
      case MILLI_KELVIN -> Dimension.DIFFERENCE;
      case MILLISECONDS, SECONDS -> Dimension.TIME;
      case WATT -> Dimension.POWER;
      case HERTZ -> Dimension.FREQUENCY;
      case PERMILLE -> Dimension.FRACTION;
      case MILLI_OHM -> Dimension.RESISTANCE;
      case NUMBER -> Dimension.NUMBER;
    };
  }

  private static Map<Parameter, Key> parameters() {
    Map<Parameter, Key> keys = new EnumMap<>(Parameter.class);
    for (Parameter parameter : Parameter.values()) {
      Unit unit = parameter.unit();
      Dimension dimension = dimension(unit);
      KeyType type =
          new KeyType.Quantity(
              dimension,
              inFile(unit, parameter.minimum()),
              inFile(unit, parameter.maximum()),
              "",
              perUnit(unit));
      String standard = dimension.shown(new BigDecimal(inFile(unit, parameter.standard())));
      KeyBuilder key = key(parameter.key(), type, Origin.OURS, "parameter").otherwise(standard);
      if (FORMER.containsKey(parameter)) {
        key.formerly(FORMER.get(parameter));
      }
      keys.put(parameter, key.make());
    }
    return keys;
  }

  private static KeyBlock block() {
    List<Key> keys = new ArrayList<>(List.of(SHORT_TIME));
    keys.addAll(PARAMETERS.values());
    return new KeyBlock("controller", keys);
  }
}
