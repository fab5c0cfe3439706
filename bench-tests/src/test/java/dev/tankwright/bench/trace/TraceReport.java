package dev.tankwright.bench.trace;

import dev.tankwright.trace.Csv;
import dev.tankwright.trace.Traced;
import dev.tankwright.trace.Verdict;
import java.util.List;
import java.util.stream.Collectors;

/** The trace as a table for programs and as a page for people. */
final class TraceReport {
  private final Findings findings;
  private final List<String> faults;

  TraceReport(Findings findings, List<String> faults) {
    this.findings = findings;
    this.faults = List.copyOf(faults);
  }

  /** A row per requirement and test or scenario; a requirement without either has a row as well. */
  String csv() {
    StringBuilder out =
        new StringBuilder(
            Csv.row(
                "requirement", "kind", "where", "name", "invocations", "assertions", "verdict"));
    for (SafetyRequirement requirement : findings.known()) {
      String id = requirement.id();
      List<Traced> tests = findings.testsOf(id);
      List<ScenarioVerdict> scenarios = findings.scenariosOf(id);
      tests.forEach(test -> out.append(row(id, test)));
      scenarios.forEach(
          v -> out.append(Csv.row(id, "scenario", v.scenario(), v.name(), "1", "1", v.outcome())));
      if (tests.isEmpty() && scenarios.isEmpty()) {
        out.append(Csv.row(id, "none", "", "", "0", "0", "not executed"));
      }
    }
    return out.toString();
  }

  private static String row(String id, Traced test) {
    String invocations = Integer.toString(test.invocations());
    String assertions = Long.toString(test.assertions());
    String verdict = test.verdict().toString();
    return Csv.row(id, "test", test.key(), test.name(), invocations, assertions, verdict);
  }

  /** A table of requirements, then one of tests and one of scenarios. */
  String markdown() {
    StringBuilder out = new StringBuilder("# Requirements and what ran\n\n");
    String extent = findings.gaps().isEmpty() ? "The whole build ran." : "**Partial**:";
    out.append(extent).append('\n');
    findings.gaps().forEach(gap -> out.append("- ").append(gap).append('\n'));
    out.append('\n').append(faults.isEmpty() ? "No fault was found.\n" : "**Faults**:\n");
    faults.forEach(fault -> out.append("- ").append(fault).append('\n'));
    requirements(out);
    tests(out);
    scenarios(out);
    return out.toString();
  }

  private void requirements(StringBuilder out) {
    head(out, "Requirements", "Id", "Statement", "Tests", "Assertions", "Verdict", "Scenarios");
    for (SafetyRequirement requirement : findings.known()) {
      List<Traced> tests = findings.testsOf(requirement.id());
      long assertions = tests.stream().mapToLong(Traced::assertions).sum();
      String scenarios =
          findings.scenariosOf(requirement.id()).stream()
              .map(v -> v.scenario() + " " + v.outcome())
              .distinct()
              .collect(Collectors.joining(", "));
      line(
          out,
          requirement.id(),
          requirement.statement(),
          Integer.toString(tests.size()),
          Long.toString(assertions),
          verdict(tests),
          scenarios);
    }
  }

  private static String verdict(List<Traced> tests) {
    return tests.stream()
        .map(Traced::verdict)
        .max(Verdict::compareTo)
        .map(Verdict::toString)
        .orElse("**not executed**");
  }

  private void tests(StringBuilder out) {
    head(out, "Tests", "Id", "Test", "Shows that", "Invocations", "Assertions", "Verdict");
    for (SafetyRequirement requirement : findings.known()) {
      for (Traced test : findings.testsOf(requirement.id())) {
        line(
            out,
            requirement.id(),
            test.simpleClassName() + "#" + test.method(),
            test.name(),
            Integer.toString(test.invocations()),
            Long.toString(test.assertions()),
            test.verdict().toString());
      }
    }
  }

  private void scenarios(StringBuilder out) {
    head(out, "Scenarios", "Id", "Scenario", "Requirement of the scenario", "Outcome");
    for (SafetyRequirement requirement : findings.known()) {
      for (ScenarioVerdict v : findings.scenariosOf(requirement.id())) {
        line(out, requirement.id(), v.scenario(), v.name(), v.outcome());
      }
    }
  }

  private static void head(StringBuilder out, String title, String... columns) {
    out.append("\n## ").append(title).append("\n\n");
    line(out, columns);
    out.append("| --- ".repeat(columns.length)).append("|\n");
  }

  private static void line(StringBuilder out, String... cells) {
    for (String cell : cells) {
      out.append("| ").append(cell.replace("|", "\\|").replace("\n", " ")).append(' ');
    }
    out.append("|\n");
  }
}
