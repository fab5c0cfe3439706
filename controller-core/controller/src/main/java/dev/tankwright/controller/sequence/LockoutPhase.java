package dev.tankwright.controller.sequence;

import dev.tankwright.controller.board.Command;
import dev.tankwright.controller.board.Refusal;

/** Everything is off until a reset whose cause is gone. */
final class LockoutPhase implements PhaseLogic {
  @Override
  public Trigger decide(Situation s) {
    if (!s.takes(Command.RESET)) {
      return Trigger.NONE;
    }
    if (s.faults.needsService()) {
      return s.refuse(Refusal.SERVICE_NEEDED);
    }
    if (s.guard.isCausePresent()) {
      return s.refuse(Refusal.CAUSE_PRESENT);
    }
    s.faults.reset();
    return Trigger.RESET_ACCEPTED;
  }
}
