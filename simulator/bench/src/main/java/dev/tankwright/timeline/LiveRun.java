package dev.tankwright.timeline;

import dev.tankwright.controller.board.Phase;
import dev.tankwright.loop.Action;
import dev.tankwright.loop.ClosedLoop;
import dev.tankwright.loop.Signal;
import dev.tankwright.loop.SignalSource;
import dev.tankwright.plant.Plant;
import dev.tankwright.scenario.Requirement;
import dev.tankwright.scenario.Scenario;
import dev.tankwright.scenario.TimelineEntry;
import dev.tankwright.scenario.Verdict;
import dev.tankwright.scenario.When;
import dev.tankwright.scenario.condition.Condition;
import dev.tankwright.scenario.quantity.Plain;
import dev.tankwright.scenario.run.ActionSource;
import dev.tankwright.scenario.run.CountingHost;
import dev.tankwright.scenario.run.Judges;
import dev.tankwright.scenario.run.RunListener;
import dev.tankwright.scenario.run.RunLoop;
import dev.tankwright.scenario.yaml.Place;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;

/**
 * The closed loop step by step, each as a run of a scenario takes it, so that the actions replay to
 * the same signals. It stands at the end of a step: the signals are those of that step, and what is
 * asked for meanwhile is done at the beginning of the next. One thread.
 */
final class LiveRun implements ActionSource, RunListener {
  private final Scenario base;
  private final List<Action> pending = new ArrayList<>();
  private final List<TimelineEntry> done = new ArrayList<>();
  private final List<Requirement> required = new ArrayList<>();
  private final Judges judges = new Judges(List.of());
  private final History history = new History();
  private final Log log = new Log();
  private final RunLoop run;
  private boolean begun;

  LiveRun(Scenario base) {
    this.base = base;
    run = new RunLoop(base, this, new CountingHost(), judges, this);
  }

  void require(Requirement requirement) {
    if (begun) {
      throw new IllegalStateException(
          "'"
              + requirement.label().name()
              + "' is required "
              + Plain.moment(run.millis())
              + " after the start; call require before the first action or wait");
    }
    required.add(requirement);
    judges.add(requirement);
  }

  /** Puts an action at the beginning of the next step; a second key waits for the step after. */
  void add(Action action) {
    boolean isKey = action.kind() == Action.Kind.PRESS;
    if (isKey && pending.stream().anyMatch(one -> one.kind() == Action.Kind.PRESS)) {
      step();
    }
    pending.add(action);
  }

  /** Takes one step if there is an action to be done, or nothing to look at yet. */
  void settle() {
    if (!pending.isEmpty() || !begun) {
      step();
    }
  }

  void step() {
    if (begun) {
      run.advance();
    }
    begun = true;
    if (run.millis() >= Scenario.LONGEST_MILLIS) {
      throw new IllegalStateException("a timeline lasts 24 h at most; split it");
    }
    run.step();
  }

  @Override
  public void step(long millis, Phase present, SignalSource source, Consumer<TimelineEntry> doer) {
    for (Action action : pending) {
      doer.accept(new TimelineEntry(new When.At(millis), action, Place.START));
    }
    pending.clear();
  }

  @Override
  public void action(TimelineEntry entry, long millis) {
    done.add(entry);
    log.action(millis, entry.text());
  }

  @Override
  public void step(long millis, ClosedLoop loop) {
    history.take(loop);
    log.step(millis, history);
  }

  boolean holds(Condition condition) {
    return condition.holds(history);
  }

  double value(Signal signal) {
    return history.value(signal);
  }

  /** Moment of the last step, ms since the start. */
  long millis() {
    return run.millis();
  }

  History history() {
    return history;
  }

  Log log() {
    return log;
  }

  /** The actions done so far, in their order. */
  List<TimelineEntry> done() {
    return List.copyOf(done);
  }

  /** What is required of the whole timeline. */
  List<Requirement> required() {
    return List.copyOf(required);
  }

  List<Verdict> verdicts() {
    // The step that was looked at last has ended: this is the moment to which it lasts.
    return judges.verdicts(run.millis() + Plant.STEP_MILLIS);
  }

  Scenario base() {
    return base;
  }
}
