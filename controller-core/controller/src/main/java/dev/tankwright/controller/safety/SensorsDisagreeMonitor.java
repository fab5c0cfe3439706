package dev.tankwright.controller.safety;

import dev.tankwright.controller.board.DeviceProfile;
import dev.tankwright.controller.board.Fault;
import dev.tankwright.controller.board.Parameter;
import dev.tankwright.controller.sensing.Channel;

/** The two sensors stand in the same solution and must agree; a broken circuit is another fault. */
final class SensorsDisagreeMonitor extends Monitor {
  private final Channel control;
  private final Channel cutOff;
  private final int limitMilliK;

  SensorsDisagreeMonitor(Channel control, Channel cutOff, DeviceProfile profile) {
    super(Fault.SENSORS_DISAGREE, profile.get(Parameter.DISAGREE_TIME));
    this.control = control;
    this.cutOff = cutOff;
    limitMilliK = profile.get(Parameter.DISAGREE_LIMIT);
  }

  @Override
  boolean holds(Watch w) {
    return Math.abs(control.milliC() - cutOff.milliC()) > limitMilliK
        && control.isValid()
        && cutOff.isValid();
  }
}
