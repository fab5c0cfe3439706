package dev.tankwright.controller.sequence;

import dev.tankwright.controller.board.Command;
import dev.tankwright.controller.board.DeviceProfile;
import dev.tankwright.controller.board.HoldTimer;
import dev.tankwright.controller.board.NoticeKind;
import dev.tankwright.controller.board.Parameter;
import dev.tankwright.controller.board.StateWords;

/** Keeps the drain open until the level has been low long enough for the rest to run out. */
final class DrainingPhase implements PhaseLogic {
  private final HoldTimer low;

  DrainingPhase(DeviceProfile profile) {
    low = new HoldTimer(profile.get(Parameter.DRAIN_TAIL));
  }

  @Override
  public Trigger decide(Situation s) {
    if (!s.measured.isMains()) {
      return Trigger.MAINS_LOST;
    }
    if (s.takes(Command.STOP)) {
      return Trigger.STOP_ASKED;
    }
    if (!low.run(!s.measured.isMinimumWet(), s.dtMs())) {
      return Trigger.NONE;
    }
    s.solution.renewed();
    s.calendar.drained();
    s.logbook.drained();
    s.journal.note(NoticeKind.SOLUTION_DRAINED, 0, 0);
    return Trigger.DRAINED;
  }

  @Override
  public void leave() {
    low.reset();
  }

  void carry(StateWords state) {
    low.carry(state);
  }
}
