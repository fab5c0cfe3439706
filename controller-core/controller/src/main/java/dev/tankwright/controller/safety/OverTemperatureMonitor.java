package dev.tankwright.controller.safety;

import dev.tankwright.controller.board.DeviceProfile;
import dev.tankwright.controller.board.Fault;
import dev.tankwright.controller.board.Parameter;
import dev.tankwright.controller.sensing.Channel;

/**
 * The second sensor has reached the cut-off limit. Independent of regulation and of its sensor. A
 * broken circuit is another fault, but as long as it is broken nobody knows that the cause is gone.
 */
final class OverTemperatureMonitor extends Monitor {
  private final Channel cutOff;
  private final int limitMilliC;
  private final int releaseMilliC;

  OverTemperatureMonitor(Channel cutOff, DeviceProfile profile) {
    super(Fault.OVER_TEMPERATURE, profile.get(Parameter.CUT_OFF_TIME));
    this.cutOff = cutOff;
    limitMilliC = profile.get(Parameter.CUT_OFF_LIMIT);
    releaseMilliC = limitMilliC - profile.get(Parameter.CUT_OFF_RELEASE);
  }

  @Override
  boolean holds(Watch w) {
    return cutOff.milliC() >= limitMilliC && cutOff.isValid();
  }

  @Override
  boolean delaysReset(Watch w) {
    return !cutOff.isValid() || cutOff.milliC() > releaseMilliC;
  }
}
