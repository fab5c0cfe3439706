package dev.tankwright.controller.safety;

import dev.tankwright.controller.board.DeviceProfile;
import dev.tankwright.controller.board.Parameter;
import dev.tankwright.controller.board.StateWords;
import dev.tankwright.controller.sensing.Channel;

/**
 * The solution must warm by a least amount in every stretch of time for which the heater was on.
 * While heating up, the stretch outlasts short breaks of the heater; at the setpoint, where
 * regulation switches to and fro, each time that it is on counts by itself.
 */
final class HeatingEffectMonitor {
  private final Channel control;
  private final int effectTimeMs;
  private final int riseMilliK;
  private int onMs;
  private int fromMilliC;

  HeatingEffectMonitor(Channel control, DeviceProfile profile) {
    this.control = control;
    effectTimeMs = profile.get(Parameter.EFFECT_TIME);
    riseMilliK = profile.get(Parameter.EFFECT_RISE);
  }

  /** Takes note of this scan; true while the condition is there. */
  boolean scan(Watch w) {
    if (!w.driven.heater()) {
      if (!w.demand.heatingUp) {
        forget();
      }
      return false;
    }
    if (onMs == 0) {
      fromMilliC = control.milliC();
    }
    onMs += Math.max(1, w.dtMs());
    if (onMs < effectTimeMs) {
      return false;
    }
    int roseMilliK = control.milliC() - fromMilliC;
    // A temperature that is not compared with any more is forgotten, so that states repeat.
    forget();
    return roseMilliK < riseMilliK;
  }

  private void forget() {
    onMs = 0;
    fromMilliC = 0;
  }

  void carry(StateWords state) {
    onMs = state.carry(onMs);
    fromMilliC = state.carry(fromMilliC);
  }
}
