package dev.tankwright.controller.safety;

import dev.tankwright.controller.board.DeviceProfile;
import dev.tankwright.controller.board.Fault;
import dev.tankwright.controller.board.Parameter;

/** The fill mark is wet while the minimum below it is dry. */
final class LevelContradictionMonitor extends Monitor {
  LevelContradictionMonitor(DeviceProfile profile) {
    super(Fault.LEVEL_CONTRADICTION, profile.get(Parameter.LEVEL_CONTRADICTION_TIME));
  }

  @Override
  boolean holds(Watch w) {
    return !w.measured.isMinimumWet() && w.measured.isFillMarkWet();
  }
}
