package dev.tankwright.bench.coverage;

import dev.tankwright.controller.board.Fault;
import dev.tankwright.controller.board.Refusal;
import dev.tankwright.controller.sequence.PhaseTable;
import dev.tankwright.trace.Csv;
import java.util.Collection;
import java.util.Locale;
import java.util.Map;

/**
 * What the library covers, as a table for programs: a row for each thing to cover and each scenario
 * that covers it, and one without a scenario for a gap.
 */
final class CoverageCsv {
  private final StringBuilder out =
      new StringBuilder(Csv.row("kind", "name", "scenario", "effect"));

  private CoverageCsv() {}

  static String of(Coverage coverage) {
    CoverageCsv csv = new CoverageCsv();
    PhaseTable.lines()
        .forEach(
            line ->
                csv.rows(
                    "transition",
                    line.from() + " " + line.trigger() + " " + line.to(),
                    coverage.transition(line)));
    for (Target.Kind kind : Target.Kind.values()) {
      Target.all(kind).forEach(target -> csv.rows(target, coverage.effects(target)));
    }
    for (Fault fault : Fault.values()) {
      csv.rows("controller-fault", fault.name(), coverage.fault(fault.name()));
    }
    for (Refusal refusal : Refusal.values()) {
      csv.rows("refusal", refusal.name(), coverage.refusal(refusal.name()));
    }
    return csv.out.toString();
  }

  private void rows(String kind, String name, Collection<String> scenarios) {
    scenarios.forEach(scenario -> out.append(Csv.row(kind, name, scenario, "")));
    if (scenarios.isEmpty()) {
      out.append(Csv.row(kind, name, "", ""));
    }
  }

  private void rows(Target target, Map<String, Effect> effects) {
    String kind = target.kind().name().toLowerCase(Locale.ROOT);
    effects.forEach(
        (scenario, effect) ->
            out.append(Csv.row(kind, target.name(), scenario, effect.toString())));
    if (effects.isEmpty()) {
      out.append(Csv.row(kind, target.name(), "", ""));
    }
  }
}
