package dev.tankwright.controller.safety;

import dev.tankwright.controller.board.DeviceProfile;
import dev.tankwright.controller.board.Parameter;
import dev.tankwright.controller.board.StateWords;
import dev.tankwright.controller.sensing.Channel;

/**
 * The solution is further above its setpoint than regulation ever lets it come. It must have been
 * lower since the setpoint was asked for: a bath that is still hot from the cycle before has not
 * overshot anything. A reset waits until the solution is no longer above what was the limit, though
 * the setpoint went with the cycle.
 */
final class OvershootMonitor {
  private final Channel control;
  private final int limitMilliK;
  private int heatToMilliC;
  private int limitMilliC = Integer.MAX_VALUE;
  private boolean wasBelow;

  OvershootMonitor(Channel control, DeviceProfile profile) {
    this.control = control;
    limitMilliK = profile.get(Parameter.OVERSHOOT_LIMIT);
  }

  /** Takes note of this scan; true while the condition is there. */
  boolean scan(Watch w) {
    if (w.demand.heatToMilliC != heatToMilliC) {
      takeUp(w.demand.heatToMilliC);
    }
    if (isAbove()) {
      return wasBelow;
    }
    if (!wasBelow && heatToMilliC != 0) {
      wasBelow = control.isValid();
    }
    return false;
  }

  private void takeUp(int setpointMilliC) {
    heatToMilliC = setpointMilliC;
    wasBelow = false;
    limitMilliC = setpointMilliC == 0 ? limitMilliC : setpointMilliC + limitMilliK;
  }

  /** True while the solution is above what is or was the limit. */
  boolean isAbove() {
    return control.milliC() > limitMilliC && control.isValid();
  }

  void carry(StateWords state) {
    heatToMilliC = state.carry(heatToMilliC);
    limitMilliC = state.carry(limitMilliC);
    wasBelow = state.carry(wasBelow);
  }
}
