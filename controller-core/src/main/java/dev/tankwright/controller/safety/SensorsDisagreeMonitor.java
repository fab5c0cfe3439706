package dev.tankwright.controller.safety;

import dev.tankwright.controller.board.DeviceProfile;
import dev.tankwright.controller.board.Fault;
import dev.tankwright.controller.board.Parameter;
import dev.tankwright.controller.sensing.Channel;

/** The two sensors stand in the same solution and must agree; a broken circuit is another fault. */
final class SensorsDisagreeMonitor extends Monitor {
  private final int limitMilliK;

  SensorsDisagreeMonitor(DeviceProfile profile) {
    super(Fault.SENSORS_DISAGREE, profile.get(Parameter.DISAGREE_TIME));
    limitMilliK = profile.get(Parameter.DISAGREE_LIMIT);
  }

  void scan(Watch w, FaultLatch latch) {
    Channel control = w.measured.control();
    Channel cutOff = w.measured.cutOff();
    boolean apart =
        control.isValid()
            && cutOff.isValid()
            && Math.abs(control.milliC() - cutOff.milliC()) > limitMilliK;
    watch(apart, w.dtMs(), latch);
  }
}
