package dev.tankwright.bench.trace;

import dev.tankwright.bench.trace.ClassOfTests.DeclaredTest;
import dev.tankwright.trace.Traced;
import dev.tankwright.trace.Verdict;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;

/**
 * What is wrong with a trace. What ran is judged always; whether enough ran is judged only when the
 * build ran everything.
 */
final class TraceCheck {
  private final Findings findings;
  private final Set<String> known;
  private final List<String> faults = new ArrayList<>();

  private TraceCheck(Findings findings) {
    this.findings = findings;
    known = findings.known().stream().map(SafetyRequirement::id).collect(Collectors.toSet());
  }

  /** One sentence per fault, in the order of the findings; none when the trace is in order. */
  static List<String> faults(Findings findings) {
    TraceCheck check = new TraceCheck(findings);
    check.unknown();
    check.badTests();
    check.badScenarios();
    if (findings.gaps().isEmpty()) {
      check.withoutTest();
      check.notExecuted();
      check.notRun();
    }
    return check.faults;
  }

  private void unknown() {
    findings.declared().forEach(test -> unknown(test.key(), test.requirements()));
    new TreeMap<>(findings.named())
        .forEach((id, scenarios) -> unknown("scenario " + scenarios, List.of(id)));
  }

  private void unknown(String who, List<String> ids) {
    for (String id : ids) {
      if (!known.contains(id)) {
        faults.add(who + " names " + id + ", which docs/safety.md does not have");
      }
    }
  }

  private void badTests() {
    for (Traced test : findings.executed()) {
      if (test.verdict() == Verdict.LEFT_OUT) {
        continue; // a gap of the trace, and a fault where it has to be complete
      }
      if (test.verdict() != Verdict.PASSED) {
        faults.add(test.key() + ", a test of " + test.requirements() + ", " + test.verdict());
      } else if (test.invocations() == 0 || test.silent() > 0) {
        faults.add(
            test.key()
                + ", a test of "
                + test.requirements()
                + ", asserts nothing in "
                + test.silent()
                + " of "
                + test.invocations()
                + " invocations; only dev.tankwright.trace.CountedAssertions count");
      }
    }
  }

  private void badScenarios() {
    for (ScenarioVerdict verdict : findings.scenarios()) {
      if (!verdict.outcome().equals("held")) {
        faults.add(
            "scenario "
                + verdict.scenario()
                + ": "
                + verdict.requirement()
                + " '"
                + verdict.name()
                + "' "
                + verdict.outcome());
      }
    }
  }

  private void withoutTest() {
    for (SafetyRequirement requirement : findings.known()) {
      boolean shown =
          findings.testsOf(requirement.id()).stream()
              .anyMatch(test -> test.verdict() == Verdict.PASSED && test.assertions() > 0);
      if (!shown) {
        faults.add(requirement.id() + " of docs/safety.md has no executed test that passed");
      }
    }
  }

  private void notExecuted() {
    Set<String> ran = findings.executed().stream().map(Traced::key).collect(Collectors.toSet());
    for (DeclaredTest test : findings.declared()) {
      if (!ran.contains(test.key())) {
        faults.add(test.key() + ", a test of " + test.requirements() + ", was not executed");
      }
    }
  }

  private void notRun() {
    new TreeMap<>(findings.named())
        .forEach(
            (id, scenarios) -> {
              Set<String> ran =
                  findings.scenariosOf(id).stream()
                      .map(ScenarioVerdict::scenario)
                      .collect(Collectors.toSet());
              scenarios.stream()
                  .filter(scenario -> !ran.contains(scenario))
                  .forEach(
                      s -> faults.add("scenario " + s + ", which names " + id + ", was not run"));
            });
  }
}
