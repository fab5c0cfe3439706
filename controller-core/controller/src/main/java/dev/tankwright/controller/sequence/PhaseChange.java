package dev.tankwright.controller.sequence;

import dev.tankwright.controller.board.DeviceProfile;
import dev.tankwright.controller.board.Fault;
import dev.tankwright.controller.board.NoticeKind;
import dev.tankwright.controller.board.Parameter;
import dev.tankwright.controller.board.Phase;
import dev.tankwright.controller.board.Recipe;

/** What a change of phase does to the cycle, and what is announced of it. */
final class PhaseChange {
  private static final int BY_OPERATOR = 0;
  private static final int BY_LID = 1;
  private static final int BY_PAUSE_LIMIT = 1;
  private static final int BY_POWER = 2;

  private final Situation s;
  private final int powerCutsMaximum;

  PhaseChange(DeviceProfile profile, Situation situation) {
    s = situation;
    powerCutsMaximum = profile.get(Parameter.POWER_CUTS_MAXIMUM);
  }

  /** Carries out what the change entails. */
  void made(Phase from, Trigger trigger, Phase to) {
    s.journal.note(NoticeKind.PHASE_CHANGED, from.ordinal(), to.ordinal());
    if (!KeepWarm.isFor(to)) {
      s.keepWarm.end();
    }
    if (trigger == Trigger.STARTED) {
      start(s.inputs.recipe);
    } else if (to == Phase.PAUSED) {
      pause(from, trigger);
    } else if (from == Phase.PAUSED && to.isRunning()) {
      s.journal.note(NoticeKind.CYCLE_RESUMED, to.ordinal(), 0);
    } else if (to == Phase.COMPLETE && from.isRunning()) {
      complete();
    } else if (s.cycle.isUnderWay() && !to.isInCycle()) {
      endEarly(trigger);
    }
  }

  private void start(Recipe recipe) {
    s.calendar.cycleStarted();
    s.tally.begin(recipe, s.journal.uptimeMs());
    s.journal.note(NoticeKind.CYCLE_STARTED, recipe.programme().ordinal(), recipe.setpointMilliC());
  }

  private void pause(Phase from, Trigger trigger) {
    int cause =
        switch (trigger) {
          case LID_OPENED -> BY_LID;
          case MAINS_LOST, CYCLE_FOUND -> BY_POWER;
          default -> BY_OPERATOR;
        };
    // After a loss of power the bath has cooled for an unknown time: it is heated up first.
    s.cycle.heldPhase = cause == BY_POWER ? Phase.HEATING : from;
    s.tally.interrupted();
    s.journal.note(NoticeKind.CYCLE_PAUSED, cause, s.cycle.heldPhase.ordinal());
    if (cause == BY_POWER) {
      powerLost();
    }
  }

  private void powerLost() {
    s.cycle.powerCuts++;
    if (s.cycle.powerCuts >= powerCutsMaximum) {
      s.faults.raise(Fault.POWER_CUTS_REPEATED);
    }
  }

  private void complete() {
    s.keepWarm.begin(s.cycle.setpointMilliC);
    s.cycle.foilVerdictDue = s.cycle.foilCheck;
    end(NoticeKind.CYCLE_COMPLETED, BY_OPERATOR);
  }

  private void endEarly(Trigger trigger) {
    switch (trigger) {
      case FAULT_LATCHED -> end(NoticeKind.CYCLE_INTERRUPTED, 0);
      case PAUSE_EXPIRED -> end(NoticeKind.CYCLE_STOPPED, BY_PAUSE_LIMIT);
      default -> end(NoticeKind.CYCLE_STOPPED, BY_OPERATOR);
    }
  }

  private void end(NoticeKind how, int cause) {
    s.tally.endedBy(s.faults.bits());
    s.logbook.cycleEnded(s.tally);
    s.cycle.end();
    s.journal.note(how, cause, 0);
  }
}
