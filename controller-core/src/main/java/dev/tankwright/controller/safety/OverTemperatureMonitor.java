package dev.tankwright.controller.safety;

import dev.tankwright.controller.board.DeviceProfile;
import dev.tankwright.controller.board.Fault;
import dev.tankwright.controller.board.Parameter;

/**
 * The second sensor has reached the cut-off limit. Independent of regulation and of its sensor. A
 * broken circuit is another fault, but as long as it is broken nobody knows that the cause is gone.
 */
final class OverTemperatureMonitor extends Monitor {
  private final int limitMilliC;
  private final int releaseMilliC;

  OverTemperatureMonitor(DeviceProfile profile) {
    super(Fault.OVER_TEMPERATURE, profile.get(Parameter.CUT_OFF_TIME));
    limitMilliC = profile.get(Parameter.CUT_OFF_LIMIT);
    releaseMilliC = limitMilliC - profile.get(Parameter.CUT_OFF_RELEASE);
  }

  void scan(Watch w, FaultLatch latch) {
    boolean known = w.measured.cutOff().isValid();
    int milliC = w.measured.cutOff().milliC();
    watch(known && milliC >= limitMilliC, !known || milliC > releaseMilliC, w.dtMs(), latch);
  }
}
