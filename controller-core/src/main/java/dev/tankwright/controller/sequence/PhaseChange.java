package dev.tankwright.controller.sequence;

import dev.tankwright.controller.board.NoticeKind;
import dev.tankwright.controller.board.Phase;
import dev.tankwright.controller.board.Recipe;

/** What a change of phase does to the cycle, and what is announced of it. */
final class PhaseChange {
  private static final int BY_OPERATOR = 0;
  private static final int BY_CIRCUMSTANCE = 1;

  private final Cycle cycle;
  private final CycleTally tally;
  private final Journal journal;

  PhaseChange(Cycle cycle, CycleTally tally, Journal journal) {
    this.cycle = cycle;
    this.tally = tally;
    this.journal = journal;
  }

  /**
   * Carries out what the change entails.
   *
   * @param recipe set values of a start; not looked at otherwise
   * @param faults latched faults, one bit each
   */
  void made(Phase from, Trigger trigger, Phase to, Recipe recipe, int faults) {
    journal.note(NoticeKind.PHASE_CHANGED, from.ordinal(), to.ordinal());
    if (trigger == Trigger.STARTED) {
      tally.begin(recipe, journal.uptimeMs());
      journal.note(NoticeKind.CYCLE_STARTED, recipe.programme().ordinal(), recipe.setpointMilliC());
    } else if (to == Phase.PAUSED) {
      pause(from, trigger);
    } else if (from == Phase.PAUSED && to.isRunning()) {
      journal.note(NoticeKind.CYCLE_RESUMED, to.ordinal(), 0);
    } else if (to == Phase.COMPLETE) {
      cycle.foilVerdictDue = cycle.foilCheck;
      end(NoticeKind.CYCLE_COMPLETED, BY_OPERATOR, faults);
    } else if (from.isInCycle() && !to.isInCycle()) {
      endEarly(trigger, faults);
    }
  }

  private void pause(Phase from, Trigger trigger) {
    cycle.heldPhase = from;
    tally.interrupted();
    journal.note(
        NoticeKind.CYCLE_PAUSED,
        trigger == Trigger.LID_OPENED ? BY_CIRCUMSTANCE : BY_OPERATOR,
        from.ordinal());
  }

  private void endEarly(Trigger trigger, int faults) {
    switch (trigger) {
      case FAULT_LATCHED -> end(NoticeKind.CYCLE_INTERRUPTED, BY_OPERATOR, faults);
      case MAINS_LOST -> end(NoticeKind.CYCLE_INTERRUPTED, BY_CIRCUMSTANCE, faults);
      case PAUSE_EXPIRED -> end(NoticeKind.CYCLE_STOPPED, BY_CIRCUMSTANCE, faults);
      default -> end(NoticeKind.CYCLE_STOPPED, BY_OPERATOR, faults);
    }
  }

  private void end(NoticeKind how, int cause, int faults) {
    tally.endedBy(faults);
    cycle.end();
    journal.note(how, cause, 0);
  }
}
