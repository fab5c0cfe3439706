package dev.tankwright.scenario.lint;

import dev.tankwright.controller.board.Command;
import dev.tankwright.controller.board.Phase;
import dev.tankwright.loop.Signal;
import dev.tankwright.scenario.ActionCondition;
import dev.tankwright.scenario.Anchors;
import dev.tankwright.scenario.TimelineEntry;
import dev.tankwright.scenario.condition.Condition;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * What a timeline leaves possible: an answer of {@code false} is certain, {@code true} says only
 * that nothing speaks against it.
 */
final class Possible {
  private static final Set<Phase> AFTER_START =
      EnumSet.of(Phase.HEATING, Phase.DEGASSING, Phase.CLEANING, Phase.PAUSED, Phase.COMPLETE);

  private final List<TimelineEntry> timeline;
  private final Anchors anchors;
  private final Set<Condition> broughtAbout;

  Possible(List<TimelineEntry> timeline) {
    this.timeline = timeline;
    anchors = new Anchors(timeline);
    broughtAbout =
        timeline.stream()
            .flatMap(entry -> ActionCondition.of(entry.action()).stream())
            .collect(Collectors.toSet());
  }

  /** Whether a phase can be reached in the run. */
  boolean phase(Phase phase) {
    return phaseBefore(phase, timeline.size());
  }

  /**
   * Whether a phase can be reached by what is done without waiting for an entry.
   *
   * @param index the entry's position, or the timeline's size to ask for the whole run
   */
  boolean phaseBefore(Phase phase, int index) {
    if (AFTER_START.contains(phase)) {
      return pressed(Command.START, index);
    }
    return phase != Phase.DRAINING || pressed(Command.DRAIN, index);
  }

  private boolean pressed(Command command, int index) {
    for (int i = 0; i < timeline.size(); i++) {
      if (timeline.get(i).action().presses(command) && !anchors.waits(i, index)) {
        return true;
      }
    }
    return false;
  }

  /** Whether a condition can hold in some step. */
  boolean holds(Condition condition) {
    return can(condition, true);
  }

  private boolean can(Condition condition, boolean truth) {
    if (condition instanceof Condition.Not not) {
      return can(not.inner(), !truth);
    } else if (condition instanceof Condition.And and) {
      return truth
          ? can(and.left(), true) && can(and.right(), true)
          : can(and.left(), false) || can(and.right(), false);
    } else if (condition instanceof Condition.Or or) {
      return truth
          ? can(or.left(), true) || can(or.right(), true)
          : can(or.left(), false) && can(or.right(), false);
    } else if (condition instanceof Condition.On on) {
      return truth ? on(on.signal()) : off(on.signal());
    } else if (condition instanceof Condition.Is is) {
      return !truth || is.signal() != Signal.PHASE || phase(Phase.of(is.position()));
    }
    return true;
  }

  private boolean off(Signal signal) {
    return signal != Signal.BOARD_SUPPLIED
        || broughtAbout.contains(new Condition.Not(new Condition.On(signal)));
  }

  private boolean on(Signal signal) {
    return switch (signal) {
      case LID_OPEN, PART_BROKEN -> broughtAbout.contains(new Condition.On(signal));
      default -> true;
    };
  }
}
