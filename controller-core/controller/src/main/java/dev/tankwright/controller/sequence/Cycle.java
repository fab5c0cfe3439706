package dev.tankwright.controller.sequence;

import dev.tankwright.controller.board.Phase;
import dev.tankwright.controller.board.Recipe;
import dev.tankwright.controller.board.StateWords;

/** Set values and progress of the cycle under way. A struct; all zero outside a cycle. */
final class Cycle {
  int setpointMilliC;

  /** How long the solution is degassed when it must be. */
  int degasMs;

  int degasLeftMs;
  int cleanLeftMs;

  /** The running phase to which a pause returns; meaningless outside a pause. */
  Phase heldPhase = Phase.HEATING;

  /** True from the completion of a foil check until its verdict is given. */
  boolean foilVerdictDue;

  boolean foilCheck;

  /** How often the cycle has lost its power. */
  int powerCuts;

  // From the start of the cycle to its end, pauses and power cuts included.
  private boolean underWay;

  boolean isUnderWay() {
    return underWay;
  }

  void begin(Recipe recipe, boolean degas, boolean foil) {
    end();
    underWay = true;
    setpointMilliC = recipe.setpointMilliC();
    degasMs = recipe.degasMs();
    degasLeftMs = degas ? degasMs : 0;
    cleanLeftMs = recipe.cleanMs();
    foilCheck = foil;
  }

  void end() {
    underWay = false;
    setpointMilliC = 0;
    degasMs = 0;
    degasLeftMs = 0;
    cleanLeftMs = 0;
    foilCheck = false;
    heldPhase = Phase.HEATING;
    powerCuts = 0;
  }

  int remainingMs() {
    return degasLeftMs + cleanLeftMs;
  }

  void carry(StateWords state) {
    underWay = state.carry(underWay);
    setpointMilliC = state.carry(setpointMilliC);
    degasMs = state.carry(degasMs);
    degasLeftMs = state.carry(degasLeftMs);
    cleanLeftMs = state.carry(cleanLeftMs);
    heldPhase = Phase.of(state.carry(heldPhase.ordinal()));
    foilVerdictDue = state.carry(foilVerdictDue);
    foilCheck = state.carry(foilCheck);
    powerCuts = state.carry(powerCuts);
  }
}
