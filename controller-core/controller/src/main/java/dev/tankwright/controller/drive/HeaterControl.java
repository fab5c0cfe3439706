package dev.tankwright.controller.drive;

import dev.tankwright.controller.board.DeviceProfile;
import dev.tankwright.controller.board.Parameter;
import dev.tankwright.controller.board.StateWords;
import dev.tankwright.controller.sensing.Channel;

/**
 * Holds a temperature, in the control mode that the profile names. A channel that cannot be
 * believed gets no heat.
 */
final class HeaterControl {
  private final OnOffControl onOff;
  private final ProportionalIntegralControl proportionalIntegral;
  private final boolean proportional;

  HeaterControl(DeviceProfile profile) {
    proportional = profile.get(Parameter.CONTROL_MODE) == 1;
    onOff = new OnOffControl(profile);
    proportionalIntegral = new ProportionalIntegralControl(profile);
  }

  /**
   * Tells whether the heater should be on.
   *
   * @param setpointMilliC temperature to hold, m°C; 0 for no heating
   * @param control the channel to hold it by
   * @param dtMs time since the previous scan, ms
   */
  boolean regulate(int setpointMilliC, Channel control, int dtMs) {
    if (setpointMilliC == 0 || !control.isValid()) {
      onOff.reset();
      proportionalIntegral.reset();
      return false;
    }
    int deviationMilliK = setpointMilliC - control.milliC();
    return proportional
        ? proportionalIntegral.regulate(deviationMilliK, dtMs)
        : onOff.regulate(deviationMilliK);
  }

  void carry(StateWords state) {
    onOff.carry(state);
    proportionalIntegral.carry(state);
  }
}
