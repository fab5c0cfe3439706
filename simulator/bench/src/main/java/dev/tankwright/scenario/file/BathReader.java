package dev.tankwright.scenario.file;

import dev.tankwright.plant.BathStart;
import dev.tankwright.scenario.key.Fields;
import dev.tankwright.scenario.key.ScenarioKeys;
import dev.tankwright.scenario.key.Values;
import dev.tankwright.scenario.quantity.Amount;
import dev.tankwright.scenario.quantity.Dimension;
import dev.tankwright.scenario.yaml.Problems;
import dev.tankwright.scenario.yaml.YamlNode;
import java.util.Optional;

/** Reads how the bath stands at the start. */
final class BathReader {
  /** Coldest and warmest solution, °C. */
  static final String COLDEST = "1";

  static final String WARMEST = "95";

  /** Heaviest load, kg. */
  static final String HEAVIEST = "20";

  private final String brim;
  private final Problems problems;
  private final Values values;

  /**
   * Makes a reader.
   *
   * @param brim volume that the tank holds at most, L
   */
  BathReader(String brim, Problems problems) {
    this.brim = brim;
    this.problems = problems;
    values = new Values(problems);
  }

  /** The bath at its start, with what the blocks for solution and load add to it. */
  Optional<BathStart> read(YamlNode node, StockReader stock) {
    if (!(node instanceof YamlNode.Keys keys)) {
      problems.add(node.place(), "'bath' needs keys with values, not " + node.noun());
      return Optional.empty();
    }
    Fields fields = new Fields(keys, "bath", ScenarioKeys.BATH, problems);
    return read(fields).map(start -> stock.start(start, fields));
  }

  private Optional<BathStart> read(Fields fields) {
    fields.lacks("fill", "fill: 4.5 L");
    fields.lacks("temperature", "temperature: 19 °C");
    Optional<Amount> fill = amount(fields, "fill", Dimension.VOLUME, "0", brim);
    Optional<Amount> warmth =
        amount(fields, "temperature", Dimension.TEMPERATURE, COLDEST, WARMEST);
    Optional<Amount> ambient = amount(fields, "ambient", Dimension.TEMPERATURE, "5", "40");
    Optional<Amount> gas = amount(fields, "dissolved-gas", Dimension.FRACTION, "0", "1.2");
    Optional<Amount> humidity = amount(fields, "humidity", Dimension.FRACTION, "0.05", "0.95");
    Optional<Amount> detergent = amount(fields, "detergent", Dimension.FRACTION, "0", "1");
    BathStart.Load load = load(fields);
    if (fill.isEmpty() || warmth.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        new BathStart(
            fill.get().value(),
            warmth.get().value(),
            ambient.map(Amount::value).orElse(21.0),
            gas.map(Amount::value).orElse(1.0),
            humidity.map(Amount::value).orElse(0.5),
            detergent.map(Amount::value).orElse(1.0),
            load));
  }

  private BathStart.Load load(Fields fields) {
    if (!fields.has("load")) {
      fields.refuse("overlap", "goes only with 'load'");
      return BathStart.Load.NONE;
    }
    double kilograms =
        amount(fields, "load", Dimension.MASS, "0", HEAVIEST).map(Amount::value).orElse(0.0);
    double overlap =
        amount(fields, "overlap", Dimension.FRACTION, "0", "1").map(Amount::value).orElse(0.0);
    return new BathStart.Load(kilograms, overlap);
  }

  private Optional<Amount> amount(
      Fields fields, String key, Dimension dimension, String least, String most) {
    return fields.text(key).flatMap(text -> values.amount(text, key, dimension, least, most));
  }
}
