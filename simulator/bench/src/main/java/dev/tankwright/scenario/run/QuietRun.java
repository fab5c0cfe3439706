package dev.tankwright.scenario.run;

import dev.tankwright.controller.board.Fault;
import dev.tankwright.controller.board.Phase;
import dev.tankwright.loop.ClosedLoop;
import dev.tankwright.scenario.Requirement;
import dev.tankwright.scenario.RequirementWatch;
import dev.tankwright.scenario.Scenario;
import dev.tankwright.scenario.TimelineEntry;
import dev.tankwright.scenario.Verdict;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

/**
 * Runs one scenario for its verdicts alone: no trace, no events, no record. The verdicts are those
 * of {@link ScenarioRun}. Made for one run; not thread-safe. No allocation per step.
 */
public final class QuietRun {
  private final Scenario scenario;
  private final Witness witness;
  private final ClosedLoop loop;
  private final Timeline timeline;
  private final RequirementWatch[] watches;
  private final EventCount notices = new EventCount(this::fault);

  /** Hears what happens in a run. */
  public interface Witness {
    /** An entry of the timeline is carried out. */
    void action(TimelineEntry entry, long millis);

    /** The controller raises a fault. */
    void fault(Fault fault, long millis);
  }

  /** Makes a run that has not begun. */
  public QuietRun(Scenario scenario, Witness witness) {
    this.scenario = scenario;
    this.witness = witness;
    loop = new ClosedLoop(scenario.profile(), scenario.bath(), scenario.start(), scenario.seed());
    timeline = new Timeline(scenario.timeline());
    watches =
        scenario.requirements().stream().map(Requirement::watch).toArray(RequirementWatch[]::new);
  }

  /** Runs to the end; once. */
  public List<Verdict> toEnd() {
    Consumer<TimelineEntry> doer = this::perform;
    while (loop.millis() < scenario.durationMillis()) {
      step(doer);
      loop.advance();
    }
    List<Verdict> verdicts = new ArrayList<>(watches.length);
    for (RequirementWatch watch : watches) {
      verdicts.add(watch.verdict(loop.millis()));
    }
    return verdicts;
  }

  private void step(Consumer<TimelineEntry> doer) {
    long millis = loop.millis();
    Phase before = loop.isSupplied() ? loop.outputs().panel.phase : null;
    timeline.step(millis, before, loop, doer);
    loop.scan();
    notices.judge(loop);
    for (RequirementWatch watch : watches) {
      watch.step(millis, loop);
    }
  }

  private void perform(TimelineEntry entry) {
    witness.action(entry, loop.millis());
    loop.perform(entry.action());
  }

  /** The phase now; empty without supply. */
  public Optional<Phase> phase() {
    return loop.isSupplied() ? Optional.of(loop.outputs().panel.phase) : Optional.empty();
  }

  private void fault(Fault fault) {
    witness.fault(fault, loop.millis());
  }
}
