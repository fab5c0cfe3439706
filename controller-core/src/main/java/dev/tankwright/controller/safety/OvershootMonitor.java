package dev.tankwright.controller.safety;

import dev.tankwright.controller.board.DeviceProfile;
import dev.tankwright.controller.board.Fault;
import dev.tankwright.controller.board.Parameter;

/** The solution is further above its setpoint than regulation ever lets it come. */
final class OvershootMonitor extends Monitor {
  private final int limitMilliK;

  OvershootMonitor(DeviceProfile profile) {
    super(Fault.OVERSHOOT, profile.get(Parameter.OVERSHOOT_TIME));
    limitMilliK = profile.get(Parameter.OVERSHOOT_LIMIT);
  }

  void scan(Watch w, FaultLatch latch) {
    boolean above =
        w.setpointMilliC > 0
            && w.measured.control().isValid()
            && w.measured.control().milliC() - w.setpointMilliC > limitMilliK;
    watch(above, w.dtMs(), latch);
  }
}
