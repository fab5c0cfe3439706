package dev.tankwright.scenario.file;

import dev.tankwright.plant.BathStart;
import dev.tankwright.scenario.block.Fields;
import dev.tankwright.scenario.key.BathKeys;
import dev.tankwright.scenario.quantity.Amount;
import dev.tankwright.scenario.yaml.Problems;
import dev.tankwright.scenario.yaml.YamlNode;
import java.util.Optional;

/** Reads the initial state of the bath. */
final class BathReader {
  private final String brim;
  private final Problems problems;

  /**
   * Makes a reader.
   *
   * @param brim volume that the tank holds at most, L
   */
  BathReader(String brim, Problems problems) {
    this.brim = brim;
    this.problems = problems;
  }

  /** The bath at its start, with what the blocks for solution and load add to it. */
  Optional<BathStart> read(YamlNode node, StockReader stock) {
    if (!(node instanceof YamlNode.Keys keys)) {
      problems.add(node.place(), "'bath' needs keys with values, not " + node.noun());
      return Optional.empty();
    }
    Fields fields = new Fields(keys, BathKeys.BLOCK, problems);
    return read(fields).map(start -> stock.start(start, fields));
  }

  private Optional<BathStart> read(Fields fields) {
    fields.lacksRequired();
    Optional<Amount> fill = fields.amount(BathKeys.FILL, brim);
    Optional<Amount> warmth = fields.amount(BathKeys.TEMPERATURE);
    BathStart rest =
        new BathStart(
            fill.map(Amount::value).orElse(0.0),
            warmth.map(Amount::value).orElse(0.0),
            fields.value(BathKeys.AMBIENT),
            fields.value(BathKeys.DISSOLVED_GAS),
            fields.value(BathKeys.HUMIDITY),
            fields.value(BathKeys.DETERGENT),
            load(fields));
    return fill.isPresent() && warmth.isPresent() ? Optional.of(rest) : Optional.empty();
  }

  private static BathStart.Load load(Fields fields) {
    fields.refuseLonely();
    Optional<Amount> mass = fields.amount(BathKeys.LOAD);
    return mass.isEmpty()
        ? BathStart.Load.NONE
        : new BathStart.Load(mass.get().value(), fields.value(BathKeys.OVERLAP));
  }
}
