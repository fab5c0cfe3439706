package dev.tankwright.bench.coverage;

import static dev.tankwright.bench.coverage.MarkdownTable.code;
import static dev.tankwright.bench.coverage.MarkdownTable.codes;
import static dev.tankwright.bench.coverage.MarkdownTable.some;

import dev.tankwright.bench.trace.ClassOfTests;
import dev.tankwright.controller.board.Fault;
import dev.tankwright.controller.board.Refusal;
import dev.tankwright.controller.sequence.PhaseTable;
import dev.tankwright.controller.sequence.Transition;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;

/** What the library covers, as the tables of a page, each by the heading that it stands under. */
final class CoverageTables {
  /** Faults of the controller that nothing outside the board can bring about, and why. */
  static final Map<Fault, String> NOT_PROVOKED =
      Map.of(
          Fault.PROGRAM_FLOW,
          "none: nothing outside the board disturbs the stages of a scan; shown by ");

  private static final String NOTHING = "nothing";

  private final Coverage coverage;
  private final Path root;

  private CoverageTables(Coverage coverage, Path root) {
    this.coverage = coverage;
    this.root = root;
  }

  /**
   * The tables.
   *
   * @param root the repository's root, for the tests that show what scenarios cannot
   */
  static Map<String, String> of(Coverage coverage, Path root) {
    CoverageTables tables = new CoverageTables(coverage, root);
    Map<String, String> byHeading = new LinkedHashMap<>();
    byHeading.put("In figures", CoverageFigures.of(coverage));
    byHeading.put("Transitions of the phase table", tables.transitions());
    byHeading.put("Faults of the plant", tables.effects(Target.Kind.PART, "Part"));
    byHeading.put("Forced pins", tables.effects(Target.Kind.PIN, "Pin"));
    byHeading.put("Other actions", tables.actions());
    byHeading.put("Faults of the controller", tables.faults());
    byHeading.put("Refusals", tables.refusals());
    byHeading.put("The library", tables.library());
    return byHeading;
  }

  private String transitions() {
    MarkdownTable table = new MarkdownTable("From", "Trigger", "To", "Scenarios");
    for (Transition line : PhaseTable.lines()) {
      String scenarios = some(coverage.transition(line));
      table.row(line.from().name(), line.trigger().name(), line.to().name(), scenarios);
    }
    return table.toString();
  }

  private String effects(Target.Kind kind, String head) {
    MarkdownTable table = new MarkdownTable(head, "Scenario", "First seen in", "Faults latched");
    for (Target target : Target.all(kind)) {
      coverage
          .effects(target)
          .forEach((scenario, effect) -> effect(table, target, scenario, effect));
    }
    return table.toString();
  }

  private static void effect(MarkdownTable table, Target target, String scenario, Effect effect) {
    String found = effect.faults().isEmpty() ? NOTHING : codes(effect.faults());
    table.row(code(target.name()), code(scenario), code(effect.signal().key()), found);
  }

  private String actions() {
    MarkdownTable table = new MarkdownTable("Action", "First scenario in which it took effect");
    for (Target target : Target.all(Target.Kind.ACTION)) {
      table.row(code(target.name()), some(coverage.effects(target).keySet()));
    }
    return table.toString();
  }

  private String faults() {
    MarkdownTable table = new MarkdownTable("Fault", "Requirement", "Scenarios");
    for (Fault fault : Fault.values()) {
      String reason = NOT_PROVOKED.get(fault);
      String shown = reason == null ? some(coverage.fault(fault.name())) : reason + tests(fault);
      table.row(code(fault.name()), fault.requirement(), shown);
    }
    return table.toString();
  }

  private String tests(Fault fault) {
    Set<String> names =
        ClassOfTests.all(root).stream()
            .flatMap(file -> file.tests().stream())
            .filter(test -> test.requirements().contains(fault.requirement()))
            .map(ClassOfTests.DeclaredTest::simpleClassName)
            .collect(Collectors.toCollection(TreeSet::new));
    return codes(names);
  }

  private String refusals() {
    MarkdownTable table = new MarkdownTable("Refusal", "Scenarios");
    for (Refusal refusal : Refusal.values()) {
      table.row(code(refusal.name()), some(coverage.refusal(refusal.name())));
    }
    return table.toString();
  }

  private String library() {
    MarkdownTable table = new MarkdownTable("Scenario", "Title", "Purpose");
    for (LibraryScenario one : coverage.runs().keySet()) {
      table.row(code(one.label()), one.scenario().title(), one.scenario().purpose());
    }
    return table.toString();
  }
}
