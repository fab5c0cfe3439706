package dev.tankwright.report.junit;

import dev.tankwright.scenario.Verdict;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * What a build server shows together. Immutable; texts may hold anything, the writer cleans them.
 *
 * @param name what it is called
 * @param className class of its cases, with points where a build server should nest
 * @param properties what makes it repeatable
 * @param cases its cases
 */
record JunitSuite(
    String name, String className, Map<String, String> properties, List<JunitSuite.Case> cases) {
  JunitSuite {
    properties = Collections.unmodifiableMap(new LinkedHashMap<>(properties));
    cases = List.copyOf(cases);
  }

  /**
   * One thing that was judged.
   *
   * @param name what it is called
   * @param type what kind of failure it is; empty when it is none
   * @param message one sentence for a failure
   * @param account the whole story
   */
  record Case(String name, String type, String message, String account) {
    /** A verdict: what failed and what nothing put to the test are failures, told apart by type. */
    static Case of(String name, Verdict.Outcome outcome, String message, String account) {
      String type =
          switch (outcome) {
            case HELD -> "";
            case FAILED -> "failed";
            case NOT_EXERCISED -> "not-exercised";
          };
      return new Case(name, type, message, account);
    }

    boolean isFailure() {
      return !type.isEmpty();
    }
  }

  int failures() {
    return (int) cases.stream().filter(Case::isFailure).count();
  }
}
