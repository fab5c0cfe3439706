package dev.tankwright.controller.sequence;

import dev.tankwright.controller.board.Command;
import dev.tankwright.controller.board.DeviceProfile;
import dev.tankwright.controller.board.Fault;
import dev.tankwright.controller.board.NoticeKind;
import dev.tankwright.controller.board.Programme;
import dev.tankwright.controller.board.Recipe;
import dev.tankwright.controller.board.Refusal;

/** Ready: accepts a start when everything a cycle needs is there. */
final class StandbyPhase implements PhaseLogic {
  private final RecipeLimits limits;

  StandbyPhase(DeviceProfile profile) {
    limits = new RecipeLimits(profile);
  }

  @Override
  public Trigger decide(Situation s) {
    if (s.takes(Command.START)) {
      Refusal refusal = hindrance(s);
      return refusal == null ? start(s) : s.refuse(refusal);
    }
    if (s.takes(Command.STOP)) {
      return stop(s);
    }
    if (s.takes(Command.DRAIN)) {
      return s.measured.isMains() ? Trigger.DRAIN_ASKED : s.refuse(Refusal.MAINS_ABSENT);
    }
    if (s.takes(Command.FRESH_SOLUTION)) {
      s.solution.renewed();
      s.keepWarm.end();
      s.journal.note(NoticeKind.SOLUTION_FILLED, 0, 0);
    }
    if (s.takes(Command.ACKNOWLEDGE)) {
      s.faults.acknowledge();
    }
    return Trigger.NONE;
  }

  private Refusal hindrance(Situation s) {
    if (!s.measured.isMains()) {
      return Refusal.MAINS_ABSENT;
    }
    if (!s.measured.isLidClosed()) {
      s.faults.raise(Fault.LID_OPEN_AT_START);
      return Refusal.LID_OPEN;
    }
    if (!s.measured.isMinimumWet()) {
      s.faults.raise(Fault.LEVEL_LOW_AT_START);
      return Refusal.LEVEL_TOO_LOW;
    }
    if (!s.measured.isDrainShut()) {
      return Refusal.DRAIN_NOT_CLOSED;
    }
    if (s.solution.refusesStart()) {
      return Refusal.SOLUTION_DUE;
    }
    return limits.refusal(s.inputs.recipe);
  }

  // There is nothing to stop but keeping warm.
  private static Trigger stop(Situation s) {
    if (!s.keepWarm.isOn()) {
      return s.refuse(Refusal.NOT_IN_THIS_PHASE);
    }
    s.keepWarm.end();
    return Trigger.NONE;
  }

  private Trigger start(Situation s) {
    Recipe recipe = s.inputs.recipe;
    boolean foil = recipe.programme() == Programme.FOIL_CHECK;
    boolean degas =
        s.solution.isDegassingRequired() || foil || recipe.programme() == Programme.DEGAS_ONLY;
    s.faults.acknowledge();
    if (limits.isTooHotForProtein(recipe)) {
      s.faults.raise(Fault.PROTEIN_MAY_SET);
    }
    s.cycle.begin(recipe, degas, foil);
    return Trigger.STARTED;
  }
}
