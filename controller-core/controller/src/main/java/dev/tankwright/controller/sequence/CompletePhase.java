package dev.tankwright.controller.sequence;

import dev.tankwright.controller.board.Command;
import dev.tankwright.controller.board.FoilVerdict;
import dev.tankwright.controller.board.NoticeKind;
import dev.tankwright.controller.board.Refusal;

/** Stays until the operator has taken note; after a foil check, with what was seen on the foil. */
final class CompletePhase implements PhaseLogic {
  @Override
  public Trigger decide(Situation s) {
    if (!s.takes(Command.ACKNOWLEDGE)) {
      return Trigger.NONE;
    }
    if (s.cycle.foilVerdictDue) {
      if (s.inputs.foilVerdict == null || s.inputs.foilVerdict == FoilVerdict.NONE) {
        return s.refuse(Refusal.VERDICT_MISSING);
      }
      s.cycle.foilVerdictDue = false;
      s.calendar.foilChecked();
      s.logbook.foilChecked();
      s.journal.note(NoticeKind.FOIL_CHECKED, s.inputs.foilVerdict.ordinal(), 0);
    }
    s.faults.acknowledge();
    return Trigger.ACKNOWLEDGED;
  }
}
