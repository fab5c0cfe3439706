package dev.tankwright.campaign;

import dev.tankwright.controller.board.Phase;
import dev.tankwright.scenario.Scenario;
import dev.tankwright.scenario.Verdict;
import dev.tankwright.scenario.run.PhaseSpan;
import dev.tankwright.scenario.run.RunResult;
import dev.tankwright.scenario.run.ScenarioRun;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalLong;

/**
 * How a scenario goes when nothing is injected. Immutable.
 *
 * @param millis how long each phase lasts the first time that it is entered, ms; phases that are
 *     never entered are absent
 * @param verdicts what becomes of the campaign's requirements then
 */
public record Undisturbed(Map<Phase, Long> millis, List<Verdict> verdicts) {
  // The version stands only in events, which nobody hears here.
  private static final String UNNAMED = "0";

  /** Keeps its own copies. */
  public Undisturbed {
    Map<Phase, Long> own = new EnumMap<>(Phase.class);
    own.putAll(millis);
    millis = Collections.unmodifiableMap(own);
    verdicts = List.copyOf(verdicts);
  }

  /** Runs the scenario once. */
  public static Undisturbed of(Scenario undisturbed) {
    RunResult run = new ScenarioRun(undisturbed, UNNAMED, event -> {}).toEnd(millis -> {});
    Map<Phase, Long> first = new EnumMap<>(Phase.class);
    for (PhaseSpan span : run.phases()) {
      first.putIfAbsent(span.phase(), span.lastedMillis());
    }
    return new Undisturbed(first, run.verdicts());
  }

  /** How long a phase lasts, ms; empty when it is never entered. */
  public OptionalLong of(Phase phase) {
    Long lasted = millis.get(phase);
    return lasted == null ? OptionalLong.empty() : OptionalLong.of(lasted);
  }
}
