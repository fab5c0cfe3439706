package dev.tankwright.bench.coverage;

import dev.tankwright.events.CycleEvent;
import dev.tankwright.events.EventType;
import dev.tankwright.scenario.RunResult;
import dev.tankwright.scenario.Scenario;
import dev.tankwright.scenario.ScenarioRun;
import java.util.ArrayList;
import java.util.List;

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
}
