package dev.tankwright.controller.sequence;

import dev.tankwright.controller.board.Phase;
import dev.tankwright.controller.board.Recipe;
import dev.tankwright.controller.board.StateWords;

/** Set values and progress of the cycle under way. A struct; all zero outside a cycle. */
final class Cycle {
  int setpointMilliC;
  int degasLeftMs;
  int cleanLeftMs;

  /** True when the solution is degassed in this cycle: owed, or the programme's purpose. */
  boolean degasses;

  /** The running phase to which a pause returns; meaningless outside a pause. */
  Phase heldPhase = Phase.HEATING;

  /** True from the completion of a foil check until its verdict is given. */
  boolean foilVerdictDue;

  boolean foilCheck;

  // From the start of the cycle to its end, pauses included.
  private boolean underWay;

  boolean isUnderWay() {
    return underWay;
  }

  void begin(Recipe recipe, boolean degas, boolean foil) {
    underWay = true;
    setpointMilliC = recipe.setpointMilliC();
    degasLeftMs = degas ? recipe.degasMs() : 0;
    cleanLeftMs = recipe.cleanMs();
    degasses = degas;
    foilCheck = foil;
  }

  void end() {
    underWay = false;
    setpointMilliC = 0;
    degasLeftMs = 0;
    cleanLeftMs = 0;
    degasses = false;
    foilCheck = false;
    heldPhase = Phase.HEATING;
  }

  int remainingMs() {
    return degasLeftMs + cleanLeftMs;
  }

  void carry(StateWords state) {
    underWay = state.carry(underWay);
    setpointMilliC = state.carry(setpointMilliC);
    degasLeftMs = state.carry(degasLeftMs);
    cleanLeftMs = state.carry(cleanLeftMs);
    degasses = state.carry(degasses);
    heldPhase = Phase.of(state.carry(heldPhase.ordinal()));
    foilVerdictDue = state.carry(foilVerdictDue);
    foilCheck = state.carry(foilCheck);
  }
}
