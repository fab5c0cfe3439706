package dev.tankwright.controller.sequence;

import dev.tankwright.controller.board.Command;

/** What heating, degassing and cleaning have in common: what ends or holds them from outside. */
final class RunningPhase {
  private RunningPhase() {}

  /**
   * The trigger that ends or holds a running phase, or {@link Trigger#NONE}. A stop ends the cycle
   * whether or not the lid is open; an open lid holds it before the operator's pause does.
   */
  static Trigger decide(Situation s) {
    if (!s.measured.isMains()) {
      return Trigger.MAINS_LOST;
    }
    if (s.takes(Command.STOP)) {
      return Trigger.STOP_ASKED;
    }
    if (!s.measured.isLidClosed()) {
      return Trigger.LID_OPENED;
    }
    return s.takes(Command.PAUSE) ? Trigger.PAUSE_ASKED : Trigger.NONE;
  }
}
