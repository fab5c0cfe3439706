package dev.tankwright.scenario.run;

import dev.tankwright.controller.board.Phase;
import dev.tankwright.scenario.Scenario;
import dev.tankwright.scenario.Verdict;
import java.util.List;
import java.util.Optional;

/**
 * Runs one scenario for its verdicts alone: no trace, no events, no record. The verdicts are those
 * of {@link ScenarioRun}. Made for one run; not thread-safe. No allocation per step.
 */
public final class QuietRun {
  private final Judges judges;
  private final RunLoop run;

  /** Makes a run that has not begun. */
  public QuietRun(Scenario scenario) {
    this(scenario, new RunListener() {});
  }

  /**
   * Makes a run that has not begun.
   *
   * @param listener hears what happens
   */
  public QuietRun(Scenario scenario, RunListener listener) {
    judges = new Judges(scenario.requirements());
    Timeline timeline = new Timeline(scenario.timeline());
    run = new RunLoop(scenario, timeline, new CountingHost(), listener, judges);
  }

  /** Runs to the end; once. */
  public List<Verdict> toEnd() {
    run.toEnd();
    return judges.verdicts(run.millis());
  }

  /** The phase now; empty without supply. */
  public Optional<Phase> phase() {
    return run.phase();
  }
}
