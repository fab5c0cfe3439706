package dev.tankwright.controller.safety;

import dev.tankwright.controller.board.DeviceProfile;
import dev.tankwright.controller.board.Fault;
import dev.tankwright.controller.board.Parameter;

/** The drain has been open for its time and the minimum level is still wet. */
final class DrainBlockedMonitor extends Monitor {
  DrainBlockedMonitor(DeviceProfile profile) {
    super(Fault.DRAIN_BLOCKED, profile.get(Parameter.DRAIN_MAXIMUM));
  }

  @Override
  boolean holds(Watch w) {
    return w.driven.drain() && w.measured.isMinimumWet();
  }
}
