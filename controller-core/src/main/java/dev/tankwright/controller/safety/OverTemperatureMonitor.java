package dev.tankwright.controller.safety;

import dev.tankwright.controller.board.DeviceProfile;
import dev.tankwright.controller.board.Fault;
import dev.tankwright.controller.board.Parameter;

/** The second sensor has reached the cut-off limit. Independent of regulation and of its sensor. */
final class OverTemperatureMonitor extends Monitor {
  private final int limitMilliC;
  private final int releaseMilliC;

  OverTemperatureMonitor(DeviceProfile profile) {
    super(Fault.OVER_TEMPERATURE, profile.get(Parameter.CUT_OFF_TIME));
    limitMilliC = profile.get(Parameter.CUT_OFF_LIMIT);
    releaseMilliC = limitMilliC - profile.get(Parameter.CUT_OFF_RELEASE);
  }

  void scan(Watch w, FaultLatch latch) {
    int milliC = w.measured.cutOff().milliC();
    watch(milliC >= limitMilliC, milliC > releaseMilliC, w.dtMs(), latch);
  }
}
