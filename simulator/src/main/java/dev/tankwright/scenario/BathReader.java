package dev.tankwright.scenario;

import dev.tankwright.plant.BathStart;
import java.util.List;
import java.util.Optional;

/** Reads how the bath stands at the start. */
final class BathReader {
  /** Volume up to the brim of the six-litre bath, L. */
  static final String BRIM = "6";

  /** Coldest and warmest solution, °C. */
  static final String COLDEST = "1";

  static final String WARMEST = "95";

  private static final List<String> KEYS =
      List.of("fill", "temperature", "ambient", "dissolved-gas");

  private final Problems problems;
  private final Values values;

  BathReader(Problems problems) {
    this.problems = problems;
    values = new Values(problems);
  }

  Optional<BathStart> read(YamlNode node) {
    if (!(node instanceof YamlNode.Keys keys)) {
      problems.add(node.place(), "'bath' needs keys with values, not " + node.noun());
      return Optional.empty();
    }
    Fields fields = new Fields(keys, "bath", KEYS, problems);
    fields.lacks("fill", "fill: 4.5 L");
    fields.lacks("temperature", "temperature: 19 °C");
    Optional<Amount> fill = amount(fields, "fill", Dimension.VOLUME, "0", BRIM);
    Optional<Amount> warmth =
        amount(fields, "temperature", Dimension.TEMPERATURE, COLDEST, WARMEST);
    Optional<Amount> ambient = amount(fields, "ambient", Dimension.TEMPERATURE, "5", "40");
    Optional<Amount> gas = amount(fields, "dissolved-gas", Dimension.FRACTION, "0", "1.2");
    if (fill.isEmpty() || warmth.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        new BathStart(
            fill.get().value(),
            warmth.get().value(),
            ambient.map(Amount::value).orElse(21.0),
            gas.map(Amount::value).orElse(1.0)));
  }

  private Optional<Amount> amount(
      Fields fields, String key, Dimension dimension, String least, String most) {
    return fields.text(key).flatMap(text -> values.amount(text, key, dimension, least, most));
  }
}
