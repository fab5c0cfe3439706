package dev.tankwright.controller.safety;

import dev.tankwright.controller.board.DeviceProfile;
import dev.tankwright.controller.board.Parameter;
import dev.tankwright.controller.board.StateWords;
import dev.tankwright.controller.sensing.Channel;

/**
 * While the heater is on, a sensor reads the very same value while the other one moves: it stands
 * still. Two sensors that stand still together are found by {@link HeatingEffectMonitor}.
 */
final class SensorFrozenMonitor {
  private static final int UNKNOWN = Integer.MIN_VALUE;

  private final Channel own;
  private final Channel other;
  private final int moveMilliK;
  private int ownMilliC = UNKNOWN;
  private int otherFromMilliC = UNKNOWN;

  SensorFrozenMonitor(Channel own, Channel other, DeviceProfile profile) {
    this.own = own;
    this.other = other;
    moveMilliK = profile.get(Parameter.FROZEN_MOVE);
  }

  /** Takes note of this scan; true while the condition is there. */
  boolean scan(Watch w) {
    if (!w.driven.heater() || !own.isValid() || !other.isValid()) {
      ownMilliC = UNKNOWN;
      otherFromMilliC = UNKNOWN;
      return false;
    }
    if (own.milliC() != ownMilliC) {
      ownMilliC = own.milliC();
      otherFromMilliC = other.milliC();
    }
    return Math.abs(other.milliC() - otherFromMilliC) >= moveMilliK;
  }

  void carry(StateWords state) {
    ownMilliC = state.carry(ownMilliC);
    otherFromMilliC = state.carry(otherFromMilliC);
  }
}
