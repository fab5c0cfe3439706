package dev.tankwright.controller.safety;

import dev.tankwright.controller.board.DeviceProfile;
import dev.tankwright.controller.board.Fault;
import dev.tankwright.controller.board.Parameter;
import dev.tankwright.controller.board.StateWords;

/**
 * The solution is further above its setpoint than regulation ever lets it come. It must have been
 * lower since the setpoint was asked for: a bath that is still hot from the cycle before has not
 * overshot anything.
 */
final class OvershootMonitor extends Monitor {
  private final int limitMilliK;
  private boolean wasBelow;

  OvershootMonitor(DeviceProfile profile) {
    super(Fault.OVERSHOOT, profile.get(Parameter.OVERSHOOT_TIME));
    limitMilliK = profile.get(Parameter.OVERSHOOT_LIMIT);
  }

  void scan(Watch w, FaultLatch latch) {
    boolean known = w.setpointMilliC > 0 && w.measured.control().isValid();
    boolean above = known && w.measured.control().milliC() - w.setpointMilliC > limitMilliK;
    wasBelow = w.setpointMilliC > 0 && (wasBelow || (known && !above));
    watch(above && wasBelow, w.dtMs(), latch);
  }

  @Override
  void carry(StateWords state) {
    super.carry(state);
    wasBelow = state.carry(wasBelow);
  }
}
