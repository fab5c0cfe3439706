package dev.tankwright.scenario.file;

import dev.tankwright.controller.board.Chemistry;
import dev.tankwright.controller.board.Command;
import dev.tankwright.plant.BathStart;
import dev.tankwright.scenario.Contents;
import dev.tankwright.scenario.TimelineEntry;
import dev.tankwright.scenario.key.Fields;
import dev.tankwright.scenario.key.ScenarioKeys;
import dev.tankwright.scenario.key.Values;
import dev.tankwright.scenario.quantity.Amount;
import dev.tankwright.scenario.quantity.Dimension;
import dev.tankwright.scenario.yaml.Problems;
import dev.tankwright.scenario.yaml.YamlNode;
import java.util.List;
import java.util.Optional;

/** Reads what is in the tank: the blocks {@code solution} and {@code load}. */
public final class StockReader {
  public static final int LONGEST = 80;

  private final Problems problems;
  private final Values values;
  private final Fields solution;
  private final Fields load;

  /**
   * Makes a reader.
   *
   * @param file the outermost keys of the scenario
   */
  StockReader(Fields file, Problems problems) {
    this.problems = problems;
    values = new Values(problems);
    solution = block(file, "solution", ScenarioKeys.SOLUTION);
    load = block(file, "load", ScenarioKeys.LOAD);
    if (file.has("load")) {
      load.lacks("mass", "mass: 1.2 kg");
    }
  }

  private Fields block(Fields file, String key, List<String> known) {
    YamlNode node = file.node(key).orElse(null);
    if (node instanceof YamlNode.Keys keys) {
      return new Fields(keys, key, known, problems);
    }
    if (node != null) {
      problems.add(node.place(), "'" + key + "' needs keys with values, not " + node.noun());
    }
    return new Fields(new YamlNode.Keys(List.of(), file.place()), key, known, problems);
  }

  /** What the operator says of the chemistry at every start that says nothing else. */
  Chemistry chemistry() {
    return new ChemistryReader(problems).read(solution, Chemistry.UNSTATED);
  }

  /** Remarks on keys that change nothing in this scenario. */
  void remarkIdle(List<TimelineEntry> timeline, BathStart start) {
    boolean starts = timeline.stream().anyMatch(e -> e.action().presses(Command.START));
    for (String key : List.of("chemistry", "chemistry-maximum")) {
      if (solution.has(key) && !starts) {
        problems.remark(
            solution.keyPlace(key),
            "unused: '" + key + "' is told at a START, and none is commanded; leave it out");
      }
    }
    if (load.has("overlap") && start.load().kilograms() == 0) {
      problems.remark(
          load.keyPlace("overlap"),
          "unused: nothing overlaps in an empty basket; give it a 'mass'");
    }
  }

  /** What only people read. */
  Contents contents() {
    return new Contents(line(solution, "lot"), line(load, "kind"));
  }

  private String line(Fields fields, String key) {
    return fields.text(key).flatMap(text -> values.line(text, key, LONGEST)).orElse("");
  }

  /** The bath at its start with what these blocks say; they must not say again what it says. */
  BathStart start(BathStart bath, Fields underBath) {
    refuseTwin(underBath, "dissolved-gas", solution, "dissolved-gas", "solution");
    refuseTwin(underBath, "detergent", solution, "detergent", "solution");
    refuseTwin(underBath, "load", load, "mass", "load");
    refuseTwin(underBath, "overlap", load, "overlap", "load");
    Optional<Amount> gas = amount(solution, "dissolved-gas", Dimension.FRACTION, "1.2");
    Optional<Amount> detergent = amount(solution, "detergent", Dimension.FRACTION, "1");
    return new BathStart(
        bath.litres(),
        bath.celsius(),
        bath.ambientCelsius(),
        gas.map(Amount::value).orElse(bath.gasSaturation()),
        bath.humidity(),
        detergent.map(Amount::value).orElse(bath.detergent()),
        load(bath.load()));
  }

  private BathStart.Load load(BathStart.Load standard) {
    Optional<Amount> mass = amount(load, "mass", Dimension.MASS, BathReader.HEAVIEST);
    Optional<Amount> overlap = amount(load, "overlap", Dimension.FRACTION, "1");
    return mass.isEmpty()
        ? standard
        : new BathStart.Load(mass.get().value(), overlap.map(Amount::value).orElse(0.0));
  }

  private Optional<Amount> amount(Fields fields, String key, Dimension dimension, String most) {
    return fields.text(key).flatMap(text -> values.amount(text, key, dimension, "0", most));
  }

  private static void refuseTwin(
      Fields bath, String bathKey, Fields block, String key, String name) {
    if (block.has(key)) {
      bath.refuse(bathKey, "is also said by '" + key + "' under '" + name + "'; keep one");
    }
  }
}
