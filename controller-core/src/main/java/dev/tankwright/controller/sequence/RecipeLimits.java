package dev.tankwright.controller.sequence;

import dev.tankwright.controller.board.DeviceProfile;
import dev.tankwright.controller.board.Parameter;
import dev.tankwright.controller.board.Recipe;

/** Which recipes a device accepts. */
final class RecipeLimits {
  private final int setpointMinimum;
  private final int setpointMaximum;
  private final int runMaximumMs;

  RecipeLimits(DeviceProfile profile) {
    setpointMinimum = profile.get(Parameter.SETPOINT_MINIMUM);
    setpointMaximum = profile.get(Parameter.SETPOINT_MAXIMUM);
    runMaximumMs = profile.get(Parameter.RUN_MAXIMUM);
  }

  boolean allow(Recipe recipe) {
    return recipe != null
        && recipe.setpointMilliC() >= setpointMinimum
        && recipe.setpointMilliC() <= setpointMaximum
        && recipe.degasMs() <= runMaximumMs
        && recipe.cleanMs() <= runMaximumMs;
  }
}
