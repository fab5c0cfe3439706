package dev.tankwright.report;

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
   * @param outcome what it came to; anything but held is a failure
   * @param message one sentence for a failure
   * @param account the whole story
   */
  record Case(String name, Verdict.Outcome outcome, String message, String account) {
    boolean held() {
      return outcome == Verdict.Outcome.HELD;
    }
  }

  int failures() {
    return (int) cases.stream().filter(each -> !each.held()).count();
  }
}
