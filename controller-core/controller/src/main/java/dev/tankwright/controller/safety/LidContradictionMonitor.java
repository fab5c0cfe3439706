package dev.tankwright.controller.safety;

import dev.tankwright.controller.board.DeviceProfile;
import dev.tankwright.controller.board.Fault;
import dev.tankwright.controller.board.Parameter;

/** The two lid contacts say the same, so one of them lies. */
final class LidContradictionMonitor extends Monitor {
  LidContradictionMonitor(DeviceProfile profile) {
    super(Fault.LID_CONTRADICTION, profile.get(Parameter.LID_CONTRADICTION_TIME));
  }

  @Override
  boolean holds(Watch w) {
    return w.measured.isLidContradictory();
  }
}
