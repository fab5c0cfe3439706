package dev.tankwright.controller.sequence;

import dev.tankwright.controller.board.DeviceProfile;
import dev.tankwright.controller.board.Parameter;
import dev.tankwright.controller.board.Recipe;
import dev.tankwright.controller.board.Refusal;

/** Which recipes a device accepts, and of which it warns. */
final class RecipeLimits {
  private final int setpointMinimum;
  private final int setpointMaximum;
  private final int runMaximumMs;
  private final int proteinLimit;

  RecipeLimits(DeviceProfile profile) {
    setpointMinimum = profile.get(Parameter.SETPOINT_MINIMUM);
    setpointMaximum = profile.get(Parameter.SETPOINT_MAXIMUM);
    runMaximumMs = profile.get(Parameter.RUN_MAXIMUM);
    proteinLimit = profile.get(Parameter.PROTEIN_LIMIT);
  }

  /** Why the recipe is not accepted; {@code null} when it is. */
  Refusal refusal(Recipe recipe) {
    if (recipe == null || !isWithin(recipe)) {
      return Refusal.RECIPE_OUT_OF_RANGE;
    }
    boolean tooHot = recipe.setpointMilliC() > recipe.chemistry().maximumMilliC();
    return tooHot ? Refusal.TOO_HOT_FOR_CHEMISTRY : null;
  }

  private boolean isWithin(Recipe recipe) {
    return recipe.setpointMilliC() >= setpointMinimum
        && recipe.setpointMilliC() <= setpointMaximum
        && recipe.degasMs() <= runMaximumMs
        && recipe.cleanMs() <= runMaximumMs;
  }

  /**
   * True when protein soil may set before enzymatic chemistry has loosened it: above about 45 °C;
   * common practice, no source.
   */
  boolean isTooHotForProtein(Recipe recipe) {
    return recipe.chemistry().enzymatic() && recipe.setpointMilliC() > proteinLimit;
  }
}
