package dev.tankwright.bench.coverage;

import dev.tankwright.events.CycleEvent;
import dev.tankwright.events.EventType;
import dev.tankwright.loop.Signal;
import dev.tankwright.loop.Trace;
import dev.tankwright.scenario.Scenario;
import dev.tankwright.scenario.run.RunResult;
import dev.tankwright.scenario.run.ScenarioRun;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/**
 * What a run of a scenario left.
 *
 * @param result verdicts, phases, marks and trace
 * @param events what the controller told, in order
 * @param notDone entries of the timeline that were never due
 */
record Ran(RunResult result, List<CycleEvent> events, List<String> notDone) {
  static Ran of(Scenario scenario) {
    List<CycleEvent> events = new ArrayList<>();
    ScenarioRun run = new ScenarioRun(scenario, "coverage", events::add);
    RunResult result = run.toEnd(millis -> {});
    return new Ran(result, events, run.notDone());
  }

  /** What the events of a type say under a key, in the order of time. */
  List<String> said(EventType type, String key) {
    return events.stream()
        .filter(event -> event.type() == type)
        .map(event -> String.valueOf(event.data().values().get(key)))
        .toList();
  }

  /** The rules of every scan that are broken in a row of the trace. */
  Set<String> brokenRules() {
    Trace trace = result.trace();
    Set<String> broken = new TreeSet<>();
    for (int row = 0; row < trace.rows(); row++) {
      int word = (int) trace.value(row, Signal.BROKEN_RULE);
      if (word != 0) {
        broken.add(Signal.BROKEN_RULE.words().get(word));
      }
    }
    return broken;
  }
}
