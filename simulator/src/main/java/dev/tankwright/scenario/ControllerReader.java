package dev.tankwright.scenario;

import dev.tankwright.controller.board.DeviceProfile;
import dev.tankwright.controller.board.Parameter;
import dev.tankwright.controller.board.Unit;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;

/** Reads what differs from the standard profile of the controller. */
final class ControllerReader {
  private static final List<String> KEYS =
      Arrays.stream(Parameter.values()).map(Parameter::key).toList();

  private final Problems problems;
  private final Values values;

  ControllerReader(Problems problems) {
    this.problems = problems;
    values = new Values(problems);
  }

  private record Override(Parameter parameter, int value, Place place) {}

  DeviceProfile read(YamlNode node) {
    if (!(node instanceof YamlNode.Keys keys)) {
      problems.add(node.place(), "'controller' needs keys with values, not " + node.noun());
      return DeviceProfile.sixLitre();
    }
    Fields fields = new Fields(keys, "controller", KEYS, problems);
    List<Override> overrides = new ArrayList<>();
    for (Parameter parameter : Parameter.values()) {
      fields.text(parameter.key()).flatMap(t -> override(parameter, t)).ifPresent(overrides::add);
    }
    return apply(overrides);
  }

  private Optional<Override> override(Parameter parameter, YamlNode.Text text) {
    Dimension dimension = dimension(parameter.unit());
    int perUnit = perUnit(parameter.unit());
    Optional<Amount> amount =
        values.amount(
            text,
            parameter.key(),
            dimension,
            bound(parameter.minimum(), perUnit),
            bound(parameter.maximum(), perUnit));
    if (amount.isEmpty()) {
      return Optional.empty();
    }
    OptionalLong whole = values.whole(text, parameter.key(), amount.get(), perUnit);
    return whole.isEmpty()
        ? Optional.empty()
        : Optional.of(
            new Override(parameter, Math.toIntExact(whole.getAsLong()), text.place()));
  }

  /** Applies the overrides in whichever order the profile's rules between parameters accept. */
  private DeviceProfile apply(List<Override> overrides) {
    DeviceProfile profile = DeviceProfile.sixLitre();
    List<Override> waiting = new ArrayList<>(overrides);
    boolean progress = true;
    while (progress && !waiting.isEmpty()) {
      progress = false;
      for (Override override : List.copyOf(waiting)) {
        try {
          profile = profile.with(override.parameter(), override.value());
          waiting.remove(override);
          progress = true;
        } catch (IllegalArgumentException e) {
          // Tried again once another parameter has changed; reported below if it never fits.
          continue;
        }
      }
    }
    for (Override override : waiting) {
      reportMisfit(profile, override);
    }
    return profile;
  }

  private void reportMisfit(DeviceProfile profile, Override override) {
    try {
      profile.with(override.parameter(), override.value());
    } catch (IllegalArgumentException e) {
      problems.add(override.place(), e.getMessage());
    }
  }

  private static String bound(int value, int perUnit) {
    return new BigDecimal(value).divide(new BigDecimal(perUnit)).toPlainString();
  }

  private static Dimension dimension(Unit unit) {
    return switch (unit) {
      case MILLI_CELSIUS -> Dimension.TEMPERATURE;
      case MILLI_KELVIN -> Dimension.DIFFERENCE;
      case MILLISECONDS -> Dimension.TIME;
      case HERTZ -> Dimension.FREQUENCY;
      case PERMILLE -> Dimension.FRACTION;
      case MILLI_OHM -> Dimension.RESISTANCE;
      case NUMBER -> Dimension.NUMBER;
    };
  }

  private static int perUnit(Unit unit) {
    return switch (unit) {
      case MILLI_CELSIUS, MILLI_KELVIN, MILLISECONDS, PERMILLE, MILLI_OHM -> Values.MILLI;
      case HERTZ, NUMBER -> 1;
    };
  }
}
