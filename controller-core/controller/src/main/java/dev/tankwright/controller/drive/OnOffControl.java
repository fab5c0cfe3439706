package dev.tankwright.controller.drive;

import dev.tankwright.controller.board.DeviceProfile;
import dev.tankwright.controller.board.Parameter;
import dev.tankwright.controller.board.StateWords;

/** On below the hysteresis around the setpoint, off above it, unchanged within. */
final class OnOffControl {
  private final int halfWidthMilliK;
  private boolean on;

  OnOffControl(DeviceProfile profile) {
    halfWidthMilliK = profile.get(Parameter.HYSTERESIS);
  }

  boolean regulate(int deviationMilliK) {
    if (on) {
      on = deviationMilliK > -halfWidthMilliK;
    } else if (deviationMilliK >= halfWidthMilliK) {
      on = true;
    }
    return on;
  }

  void reset() {
    on = false;
  }

  void carry(StateWords state) {
    on = state.carry(on);
  }
}
