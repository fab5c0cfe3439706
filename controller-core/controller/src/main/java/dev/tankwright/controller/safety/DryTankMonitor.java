package dev.tankwright.controller.safety;

import dev.tankwright.controller.board.DeviceProfile;
import dev.tankwright.controller.board.Fault;
import dev.tankwright.controller.board.HoldTimer;
import dev.tankwright.controller.board.Parameter;
import dev.tankwright.controller.board.StateWords;

/**
 * The solution is below the minimum while the heater or the ultrasound is wanted. How long the
 * level has been low is watched all the time, so that a drive which is wanted over a dry tank is
 * refused in that very scan.
 */
final class DryTankMonitor extends Monitor {
  private final HoldTimer low;

  DryTankMonitor(DeviceProfile profile) {
    super(Fault.DRY_TANK, 0);
    low = new HoldTimer(profile.get(Parameter.DRY_TIME));
  }

  @Override
  boolean holds(Watch w) {
    return low.run(!w.measured.isMinimumWet(), w.dtMs()) && isInUse(w);
  }

  private static boolean isInUse(Watch w) {
    return w.driven.inUse() || w.wanted.heater || w.wanted.ultrasound;
  }

  /** True while the level is low, for however long. */
  boolean isLow() {
    return low.isRunning();
  }

  /** In what time the tank counts as dry if nothing changes, ms. */
  int dryInMs() {
    return low.expiresInMs();
  }

  boolean isDry() {
    return low.isExpired();
  }

  @Override
  boolean delaysReset(Watch w) {
    return !w.measured.isMinimumWet();
  }

  void carry(StateWords state) {
    low.carry(state);
  }
}
