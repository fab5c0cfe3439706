package dev.tankwright.controller.drive;

import dev.tankwright.controller.board.DeviceProfile;
import dev.tankwright.controller.board.Parameter;
import dev.tankwright.controller.board.StateWords;

/** On below the dead band, off above it, unchanged within. */
final class DeadBandRegulation {
  private final int halfWidthMilliK;
  private boolean on;

  DeadBandRegulation(DeviceProfile profile) {
    halfWidthMilliK = profile.get(Parameter.DEAD_BAND);
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
