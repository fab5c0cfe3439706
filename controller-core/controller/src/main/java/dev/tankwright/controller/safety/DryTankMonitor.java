package dev.tankwright.controller.safety;

import dev.tankwright.controller.board.DeviceProfile;
import dev.tankwright.controller.board.HoldTimer;
import dev.tankwright.controller.board.Parameter;
import dev.tankwright.controller.board.StateWords;

/**
 * The solution is below the minimum while the heater or the ultrasound is wanted. How long the
 * level has been low is watched all the time, so that a drive which is wanted over a dry tank is
 * refused in that very scan.
 */
final class DryTankMonitor {
  private final HoldTimer low;

  DryTankMonitor(DeviceProfile profile) {
    low = new HoldTimer(profile.get(Parameter.DRY_TIME));
  }

  /** Takes note of this scan; true while the condition is there. */
  boolean scan(Watch w) {
    return low.run(!w.measured.isMinimumWet(), w.dtMs()) && isInUse(w);
  }

  private static boolean isInUse(Watch w) {
    return w.driven.inUse() || w.wanted.heater || w.wanted.ultrasound;
  }

  /** True when the level has been low for its time. */
  boolean isDry() {
    return low.isExpired();
  }

  void carry(StateWords state) {
    low.carry(state);
  }
}
