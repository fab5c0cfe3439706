package dev.tankwright.scenario.file;

import dev.tankwright.controller.board.Chemistry;
import dev.tankwright.controller.board.Command;
import dev.tankwright.plant.BathStart;
import dev.tankwright.scenario.Contents;
import dev.tankwright.scenario.TimelineEntry;
import dev.tankwright.scenario.block.Fields;
import dev.tankwright.scenario.block.Key;
import dev.tankwright.scenario.block.KeyBlock;
import dev.tankwright.scenario.key.BathKeys;
import dev.tankwright.scenario.key.FileKeys;
import dev.tankwright.scenario.key.StockKeys;
import dev.tankwright.scenario.quantity.Amount;
import dev.tankwright.scenario.yaml.Problems;
import dev.tankwright.scenario.yaml.YamlNode;
import java.util.List;
import java.util.Optional;

/** Reads what is in the tank: the blocks {@code solution} and {@code load}. */
final class StockReader {
  private final Problems problems;
  private final Fields solution;
  private final Fields load;

  /**
   * Makes a reader.
   *
   * @param file the outermost keys of the scenario
   */
  StockReader(Fields file, Problems problems) {
    this.problems = problems;
    solution = block(file, FileKeys.SOLUTION, StockKeys.SOLUTION);
    load = block(file, FileKeys.LOAD, StockKeys.LOAD);
    if (file.has(FileKeys.LOAD)) {
      load.lacksRequired();
    }
  }

  private Fields block(Fields file, Key key, KeyBlock known) {
    YamlNode node = file.node(key).orElse(null);
    if (node instanceof YamlNode.Keys keys) {
      return new Fields(keys, known, problems);
    }
    if (node != null) {
      String needs = "'" + key.name() + "' needs keys with values, not " + node.noun();
      problems.add(node.place(), needs);
    }
    return new Fields(new YamlNode.Keys(List.of(), file.place()), known, problems);
  }

  /** What the operator says of the chemistry at every start that says nothing else. */
  Chemistry chemistry() {
    return ChemistryReader.read(
        solution, StockKeys.CHEMISTRY, StockKeys.CHEMISTRY_MAXIMUM, Chemistry.UNSTATED);
  }

  /** Remarks on keys that change nothing in this scenario. */
  void remarkIdle(List<TimelineEntry> timeline, BathStart start) {
    boolean starts = timeline.stream().anyMatch(e -> e.action().presses(Command.START));
    for (Key key : List.of(StockKeys.CHEMISTRY, StockKeys.CHEMISTRY_MAXIMUM)) {
      if (solution.has(key) && !starts) {
        problems.remark(
            solution.keyPlace(key),
            "unused: '" + key.name() + "' is told at a START, and none is commanded; leave it out");
      }
    }
    if (load.has(StockKeys.OVERLAP) && start.load().kilograms() == 0) {
      problems.remark(
          load.keyPlace(StockKeys.OVERLAP),
          "unused: nothing overlaps in an empty basket; give it a 'mass'");
    }
  }

  /** What the bath and the controller do not know. */
  Contents contents() {
    return new Contents(
        solution.line(StockKeys.LOT).orElse(""), load.line(StockKeys.KIND).orElse(""));
  }

  /** The bath at its start with what these blocks say; they must not say again what it says. */
  BathStart start(BathStart bath, Fields underBath) {
    refuseTwin(underBath, BathKeys.DISSOLVED_GAS, solution, StockKeys.DISSOLVED_GAS, "solution");
    refuseTwin(underBath, BathKeys.DETERGENT, solution, StockKeys.DETERGENT, "solution");
    refuseTwin(underBath, BathKeys.LOAD, load, StockKeys.MASS, "load");
    refuseTwin(underBath, BathKeys.OVERLAP, load, StockKeys.OVERLAP, "load");
    return new BathStart(
        bath.litres(),
        bath.celsius(),
        bath.ambientCelsius(),
        given(solution, StockKeys.DISSOLVED_GAS, bath.gasSaturation()),
        bath.humidity(),
        given(solution, StockKeys.DETERGENT, bath.detergent()),
        load(bath.load()));
  }

  private static double given(Fields fields, Key key, double standard) {
    return fields.amount(key).map(Amount::value).orElse(standard);
  }

  private BathStart.Load load(BathStart.Load standard) {
    Optional<Amount> mass = load.amount(StockKeys.MASS);
    double overlap = load.value(StockKeys.OVERLAP);
    return mass.isEmpty() ? standard : new BathStart.Load(mass.get().value(), overlap);
  }

  private static void refuseTwin(Fields bath, Key bathKey, Fields block, Key key, String name) {
    if (block.has(key)) {
      String where = "is also said by '" + key.name() + "' under '" + name + "'; keep one";
      bath.refuse(bathKey.name(), where);
    }
  }
}
