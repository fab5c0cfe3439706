package dev.tankwright.controller.sequence;

import dev.tankwright.controller.board.CycleCause;
import dev.tankwright.controller.board.DeviceProfile;
import dev.tankwright.controller.board.Fault;
import dev.tankwright.controller.board.NoticeKind;
import dev.tankwright.controller.board.Parameter;
import dev.tankwright.controller.board.Phase;
import dev.tankwright.controller.board.Recipe;

/** What a change of phase does to the cycle, and what is announced of it. */
final class PhaseChange {
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
    CycleCause cause =
        switch (trigger) {
          case LID_OPENED -> CycleCause.LID;
          case MAINS_LOST, CYCLE_FOUND -> CycleCause.POWER;
          default -> CycleCause.OPERATOR;
        };
    // After a loss of power the bath has cooled for an unknown time: it is heated up first.
    s.cycle.heldPhase = cause == CycleCause.POWER ? Phase.HEATING : from;
    s.tally.interrupted();
    s.journal.note(NoticeKind.CYCLE_PAUSED, cause.ordinal(), s.cycle.heldPhase.ordinal());
    if (cause == CycleCause.POWER) {
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
    end(NoticeKind.CYCLE_COMPLETED, CycleCause.NONE);
  }

  private void endEarly(Trigger trigger) {
    switch (trigger) {
      case FAULT_LATCHED -> end(NoticeKind.CYCLE_INTERRUPTED, CycleCause.FAULT);
      case PAUSE_EXPIRED -> end(NoticeKind.CYCLE_STOPPED, CycleCause.PAUSE_LIMIT);
      default -> end(NoticeKind.CYCLE_STOPPED, CycleCause.OPERATOR);
    }
  }

  private void end(NoticeKind how, CycleCause cause) {
    s.tally.endedBy(s.faults.bits());
    s.logbook.cycleEnded(s.tally);
    s.cycle.end();
    s.journal.note(how, cause.ordinal(), 0);
  }
}
