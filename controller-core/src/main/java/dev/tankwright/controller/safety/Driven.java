package dev.tankwright.controller.safety;

import dev.tankwright.controller.board.StateWords;

/**
 * The actuators as the guard last drove them: what the feedbacks must answer to. A struct, written
 * by the guard alone.
 */
final class Driven {
  boolean heater;
  boolean cutOffRelay;
  boolean ultrasound;
  boolean drain;

  void carry(StateWords state) {
    heater = state.carry(heater);
    cutOffRelay = state.carry(cutOffRelay);
    ultrasound = state.carry(ultrasound);
    drain = state.carry(drain);
  }
}
