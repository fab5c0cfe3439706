package dev.tankwright.bench.trace;

import dev.tankwright.bench.trace.ClassOfTests.DeclaredTest;
import dev.tankwright.trace.Traced;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Everything that the trace joins.
 *
 * @param known the requirements of docs/safety.md
 * @param declared tests that name a requirement, as compiled
 * @param executed tests that name a requirement, as run in this build
 * @param named ids that the scenarios name, with the scenarios
 * @param scenarios verdicts of the scenarios, as run in this build
 * @param gaps why this build cannot have run everything; empty when it should have
 */
record Findings(
    List<SafetyRequirement> known,
    List<DeclaredTest> declared,
    List<Traced> executed,
    Map<String, Set<String>> named,
    List<ScenarioVerdict> scenarios,
    List<String> gaps) {

  Findings {
    known = List.copyOf(known);
    declared = List.copyOf(declared);
    executed = List.copyOf(executed);
    named = Map.copyOf(named);
    scenarios = List.copyOf(scenarios);
    gaps = List.copyOf(gaps);
  }

  /** Tests of a requirement that were met in this build. */
  List<Traced> testsOf(String id) {
    return executed.stream().filter(test -> test.requirements().contains(id)).toList();
  }

  /** Verdicts of scenarios on a requirement. */
  List<ScenarioVerdict> scenariosOf(String id) {
    return scenarios.stream().filter(verdict -> verdict.requirement().equals(id)).toList();
  }
}
