package dev.tankwright.scenario.file;

import dev.tankwright.controller.board.Chemistry;
import dev.tankwright.scenario.block.Fields;
import dev.tankwright.scenario.block.Key;
import dev.tankwright.scenario.key.StockKeys;
import java.util.OptionalLong;

/** Reads what is said of the chemistry in the tank. */
final class ChemistryReader {
  private ChemistryReader() {}

  /**
   * The chemistry that a block names; what it leaves out is as usual.
   *
   * @param kind key of its kind
   * @param maximum key of its hottest temperature
   */
  static Chemistry read(Fields fields, Key kind, Key maximum, Chemistry usual) {
    boolean enzymatic =
        fields.word(kind).map(StockKeys.CHEMISTRIES.get(0)::equals).orElse(usual.enzymatic());
    OptionalLong most = fields.steps(maximum);
    return new Chemistry(
        enzymatic, most.isPresent() ? Math.toIntExact(most.getAsLong()) : usual.maximumMilliC());
  }
}
