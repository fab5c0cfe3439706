package dev.tankwright.scenario.file;

import dev.tankwright.controller.board.DeviceProfile;
import dev.tankwright.controller.board.Parameter;
import dev.tankwright.controller.board.Unit;
import dev.tankwright.scenario.key.Fields;
import dev.tankwright.scenario.key.Values;
import dev.tankwright.scenario.quantity.Amount;
import dev.tankwright.scenario.quantity.Dimension;
import dev.tankwright.scenario.yaml.Place;
import dev.tankwright.scenario.yaml.Problems;
import dev.tankwright.scenario.yaml.YamlNode;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.stream.Stream;

/** Reads what differs from the standard profile of the controller. */
public final class ControllerReader {
  static final String SHORT_TIME = "short-time";
  public static final List<String> KEYS =
      Stream.concat(Stream.of(SHORT_TIME), Arrays.stream(Parameter.values()).map(Parameter::key))
          .toList();

  private final Problems problems;
  private final Values values;
  private boolean shortTime;

  ControllerReader(Problems problems) {
    this.problems = problems;
    values = new Values(problems);
  }

  private record Change(Parameter parameter, int value, Place place) {}

  DeviceProfile read(YamlNode node) {
    if (!(node instanceof YamlNode.Keys keys)) {
      problems.add(node.place(), "'controller' needs keys with values, not " + node.noun());
      return DeviceProfile.sixLitre();
    }
    Fields fields = new Fields(keys, "controller", KEYS, problems);
    shortTime =
        fields
            .text(SHORT_TIME)
            .flatMap(t -> values.word(t, SHORT_TIME, List.of("on", "off")))
            .map("on"::equals)
            .orElse(false);
    List<Change> changes = new ArrayList<>();
    for (Parameter parameter : Parameter.values()) {
      fields.text(parameter.key()).flatMap(t -> change(parameter, t)).ifPresent(changes::add);
    }
    return apply(changes);
  }

  private Optional<Change> change(Parameter parameter, YamlNode.Text text) {
    Dimension dimension = dimension(parameter.unit());
    int perUnit = perUnit(parameter.unit());
    Optional<Amount> amount =
        values.amount(
            text,
            parameter.key(),
            dimension,
            bound(shortTime ? parameter.shortMinimum() : parameter.minimum(), perUnit),
            bound(parameter.maximum(), perUnit));
    if (amount.isEmpty()) {
      return Optional.empty();
    }
    OptionalLong whole = values.whole(text, parameter.key(), amount.get(), perUnit);
    return whole.isEmpty()
        ? Optional.empty()
        : Optional.of(new Change(parameter, Math.toIntExact(whole.getAsLong()), text.place()));
  }

  /** Makes the changes in whichever order the profile's rules between parameters accept. */
  private DeviceProfile apply(List<Change> changes) {
    DeviceProfile profile = DeviceProfile.sixLitre();
    if (shortTime) {
      profile = profile.withShortTime();
    }
    Map<Change, String> misfits = new LinkedHashMap<>();
    List<Change> waiting = changes;
    int before;
    do {
      before = waiting.size();
      misfits.clear();
      for (Change change : waiting) {
        try {
          profile = profile.with(change.parameter(), change.value());
        } catch (IllegalArgumentException e) {
          misfits.put(change, e.getMessage());
        }
      }
      waiting = List.copyOf(misfits.keySet());
    } while (!waiting.isEmpty() && waiting.size() < before);
    misfits.forEach((change, misfit) -> problems.add(change.place(), misfit));
    return profile;
  }

  private static String bound(int value, int perUnit) {
    return new BigDecimal(value).divide(new BigDecimal(perUnit)).toPlainString();
  }

  public static Dimension dimension(Unit unit) {
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

  private static int perUnit(Unit unit) {
    return switch (unit) {
      case MILLI_CELSIUS, MILLI_KELVIN, MILLISECONDS, PERMILLE, MILLI_OHM -> Values.MILLI;
      case HERTZ, NUMBER, SECONDS, WATT -> 1;
    };
  }
}
