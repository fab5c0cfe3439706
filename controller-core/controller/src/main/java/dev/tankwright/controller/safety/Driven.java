package dev.tankwright.controller.safety;

import dev.tankwright.controller.board.StateWords;

/** The actuators as the guard last drove them: what the feedbacks must answer to. */
final class Driven {
  private static final int HEATER = 1;
  private static final int CUT_OFF_RELAY = 1 << 1;
  private static final int ULTRASOUND = 1 << 2;
  private static final int DRAIN = 1 << 3;

  private int word;

  void set(boolean heater, boolean cutOffRelay, boolean ultrasound, boolean drain) {
    word =
        (heater ? HEATER : 0)
            | (cutOffRelay ? CUT_OFF_RELAY : 0)
            | (ultrasound ? ULTRASOUND : 0)
            | (drain ? DRAIN : 0);
  }

  boolean heater() {
    return (word & HEATER) != 0;
  }

  boolean cutOffRelay() {
    return (word & CUT_OFF_RELAY) != 0;
  }

  boolean ultrasound() {
    return (word & ULTRASOUND) != 0;
  }

  boolean drain() {
    return (word & DRAIN) != 0;
  }

  /** True while the solution is in use: heated or sounded. */
  boolean inUse() {
    return (word & (HEATER | ULTRASOUND)) != 0;
  }

  void carry(StateWords state) {
    word = state.carry(word);
  }
}
