package dev.tankwright.controller.drive;

import dev.tankwright.controller.board.DeviceProfile;
import dev.tankwright.controller.board.Parameter;
import dev.tankwright.controller.board.StateWords;
import dev.tankwright.controller.sensing.Channel;

/**
 * Holds a temperature, by the kind of regulation that the profile names. A channel that cannot be
 * believed gets no heat.
 */
final class HeaterRegulator {
  private final DeadBandRegulation deadBand;
  private final ProportionalIntegralRegulation proportionalIntegral;
  private final boolean proportional;

  HeaterRegulator(DeviceProfile profile) {
    proportional = profile.get(Parameter.REGULATION) == 1;
    deadBand = new DeadBandRegulation(profile);
    proportionalIntegral = new ProportionalIntegralRegulation(profile);
  }

  /** True when regulation depends on time and not on temperature alone. */
  boolean keepsTime() {
    return proportional;
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
      deadBand.reset();
      proportionalIntegral.reset();
      return false;
    }
    int deviationMilliK = setpointMilliC - control.milliC();
    return proportional
        ? proportionalIntegral.regulate(deviationMilliK, dtMs)
        : deadBand.regulate(deviationMilliK);
  }

  void carry(StateWords state) {
    deadBand.carry(state);
    proportionalIntegral.carry(state);
  }
}
