package dev.tankwright.controller.safety;

import dev.tankwright.controller.board.DeviceProfile;
import dev.tankwright.controller.board.Fault;
import dev.tankwright.controller.board.Parameter;
import dev.tankwright.controller.board.StateWords;
import dev.tankwright.controller.sensing.Channel;

/**
 * The solution is further above its setpoint than regulation ever lets it come. It must have been
 * lower since the setpoint was asked for: a bath that is still hot from the cycle before has not
 * overshot anything. A reset waits until the solution is no longer above what was the limit, though
 * the setpoint went with the cycle.
 */
final class OvershootMonitor extends Monitor {
  private final Channel control;
  private final int limitMilliK;
  private int heatToMilliC;
  private int limitMilliC = Integer.MAX_VALUE;
  private boolean wasBelow;

  OvershootMonitor(Channel control, DeviceProfile profile) {
    super(Fault.OVERSHOOT, profile.get(Parameter.OVERSHOOT_TIME));
    this.control = control;
    limitMilliK = profile.get(Parameter.OVERSHOOT_LIMIT);
  }

  @Override
  boolean holds(Watch w) {
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

  @Override
  boolean delaysReset(Watch w) {
    return isAbove();
  }

  private void takeUp(int setpointMilliC) {
    heatToMilliC = setpointMilliC;
    wasBelow = false;
    limitMilliC = setpointMilliC == 0 ? limitMilliC : setpointMilliC + limitMilliK;
  }

  private boolean isAbove() {
    return control.milliC() > limitMilliC && control.isValid();
  }

  void carry(StateWords state) {
    heatToMilliC = state.carry(heatToMilliC);
    limitMilliC = state.carry(limitMilliC);
    wasBelow = state.carry(wasBelow);
  }
}
