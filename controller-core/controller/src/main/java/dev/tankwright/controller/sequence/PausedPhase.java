package dev.tankwright.controller.sequence;

import dev.tankwright.controller.board.Command;
import dev.tankwright.controller.board.DeviceProfile;
import dev.tankwright.controller.board.HoldTimer;
import dev.tankwright.controller.board.Parameter;
import dev.tankwright.controller.board.Phase;
import dev.tankwright.controller.board.Refusal;
import dev.tankwright.controller.board.StateWords;

/** Holds a cycle until the operator resumes or stops it. Closing the lid does nothing by itself. */
final class PausedPhase implements PhaseLogic {
  private final HoldTimer pause;

  PausedPhase(DeviceProfile profile) {
    pause = new HoldTimer(profile.get(Parameter.PAUSE_MAXIMUM));
  }

  @Override
  public Trigger decide(Situation s) {
    if (s.takes(Command.STOP)) {
      return Trigger.STOP_ASKED;
    }
    // The pause lasts on while a resume is refused, however often it is tried.
    boolean expired = pause.run(true, s.dtMs());
    Trigger resumed = s.takes(Command.RESUME) ? resume(s) : Trigger.NONE;
    return resumed == Trigger.NONE && expired ? Trigger.PAUSE_EXPIRED : resumed;
  }

  @Override
  public void leave() {
    pause.reset();
  }

  void carry(StateWords state) {
    pause.carry(state);
  }

  private static Trigger resume(Situation s) {
    if (!s.measured.isMains()) {
      return s.refuse(Refusal.MAINS_ABSENT);
    }
    if (!s.measured.isLidClosed()) {
      return s.refuse(Refusal.LID_OPEN);
    }
    if (!s.measured.isMinimumWet()) {
      return s.refuse(Refusal.LEVEL_TOO_LOW);
    }
    return back(s);
  }

  // A solution that must be degassed first is not cleaned in, whatever was held.
  private static Trigger back(Situation s) {
    if (s.cycle.heldPhase == Phase.CLEANING && s.solution.isDegassingRequired()) {
      return Trigger.RESUMED_HEATING;
    }
    return switch (s.cycle.heldPhase) {
      case DEGASSING -> Trigger.RESUMED_DEGASSING;
      case CLEANING -> Trigger.RESUMED_CLEANING;
      default -> Trigger.RESUMED_HEATING;
    };
  }
}
