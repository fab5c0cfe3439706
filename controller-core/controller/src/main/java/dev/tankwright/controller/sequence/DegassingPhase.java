package dev.tankwright.controller.sequence;

import dev.tankwright.controller.board.NoticeKind;

/** Counts the degassing time down, pulses and pauses alike. */
final class DegassingPhase implements PhaseLogic {
  @Override
  public Trigger decide(Situation s) {
    Trigger outside = RunningPhase.decide(s);
    if (outside != Trigger.NONE) {
      return outside;
    }
    s.cycle.degasLeftMs = Math.max(0, s.cycle.degasLeftMs - s.dtMs());
    if (s.cycle.degasLeftMs > 0) {
      return Trigger.NONE;
    }
    s.solution.degassed();
    s.tally.degassed();
    s.journal.note(NoticeKind.SOLUTION_DEGASSED, 0, 0);
    return s.cycle.cleanLeftMs > 0 ? Trigger.DEGASSED : Trigger.DEGASSED_ONLY;
  }
}
