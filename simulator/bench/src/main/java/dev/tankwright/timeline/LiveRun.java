package dev.tankwright.timeline;

import dev.tankwright.loop.Action;
import dev.tankwright.loop.ClosedLoop;
import dev.tankwright.loop.Signal;
import dev.tankwright.plant.Plant;
import dev.tankwright.scenario.Requirement;
import dev.tankwright.scenario.RequirementWatch;
import dev.tankwright.scenario.Scenario;
import dev.tankwright.scenario.TimelineEntry;
import dev.tankwright.scenario.Verdict;
import dev.tankwright.scenario.When;
import dev.tankwright.scenario.condition.Condition;
import dev.tankwright.scenario.quantity.Plain;
import dev.tankwright.scenario.run.EventCount;
import dev.tankwright.scenario.yaml.Place;
import java.util.ArrayList;
import java.util.List;

/**
 * The closed loop step by step, each as a run of a scenario takes it, so that the actions replay to
 * the same signals. It stands at the end of a step: the signals are those of that step, and what is
 * asked for meanwhile is done at the beginning of the next. One thread.
 */
final class LiveRun {
  private final Scenario base;
  private final ClosedLoop loop;
  private final EventCount events = new EventCount(fault -> {});
  private final List<Action> pending = new ArrayList<>();
  private final List<TimelineEntry> done = new ArrayList<>();
  private final List<Requirement> required = new ArrayList<>();
  private final List<RequirementWatch> watches = new ArrayList<>();
  private final History history = new History();
  private final Log log = new Log();
  private boolean begun;

  LiveRun(Scenario base) {
    this.base = base;
    loop = new ClosedLoop(base.profile(), base.bath(), base.start(), base.seed());
  }

  void require(Requirement requirement) {
    if (begun) {
      throw new IllegalStateException(
          "'"
              + requirement.label().name()
              + "' is required "
              + Plain.moment(loop.millis())
              + " after the start; require before anything is done or waited for");
    }
    required.add(requirement);
    watches.add(requirement.watch());
  }

  /** Puts an action at the beginning of the next step; a second key waits for the step after. */
  void add(Action action) {
    if (action instanceof Action.Press
        && pending.stream().anyMatch(Action.Press.class::isInstance)) {
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
      loop.advance();
    }
    begun = true;
    if (loop.millis() >= Scenario.LONGEST_MILLIS) {
      throw new IllegalStateException("a timeline lasts 24 h at most; make it several");
    }
    pending.forEach(this::perform);
    pending.clear();
    loop.scan();
    events.judge(loop);
    for (RequirementWatch watch : watches) {
      watch.step(loop.millis(), loop);
    }
    history.take(loop);
    log.step(loop.millis(), history);
  }

  private void perform(Action action) {
    TimelineEntry entry = new TimelineEntry(new When.At(loop.millis()), action, Place.START);
    done.add(entry);
    log.action(loop.millis(), entry.text());
    loop.perform(action);
  }

  boolean holds(Condition condition) {
    return condition.holds(history);
  }

  double value(Signal signal) {
    return history.value(signal);
  }

  /** Moment of the last step, ms since the start. */
  long millis() {
    return loop.millis();
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
    List<Verdict> verdicts = new ArrayList<>();
    // The step that was looked at last has ended: this is the moment to which it lasts.
    watches.forEach(watch -> verdicts.add(watch.verdict(loop.millis() + Plant.STEP_MILLIS)));
    return verdicts;
  }

  Scenario base() {
    return base;
  }
}
