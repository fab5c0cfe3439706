package dev.tankwright.controller.sequence;

import dev.tankwright.controller.board.DeviceProfile;
import dev.tankwright.controller.board.HoldTimer;
import dev.tankwright.controller.board.Parameter;
import dev.tankwright.controller.board.StateWords;

/**
 * What is known of the solution: whether it must be degassed before it cleans. A device that knows
 * nothing owes degassing.
 */
final class Solution {
  private final HoldTimer rest;
  private boolean degasOwed = true;

  Solution(DeviceProfile profile) {
    rest = new HoldTimer(profile.get(Parameter.REST_MAXIMUM));
  }

  /** Takes note of this scan: a long rest without ultrasound lets gas dissolve again. */
  void scan(boolean sounding, int dtMs) {
    if (rest.run(!sounding, dtMs)) {
      degasOwed = true;
    }
  }

  void renewed() {
    degasOwed = true;
  }

  void degassed() {
    degasOwed = false;
    rest.reset();
  }

  boolean isDegasOwed() {
    return degasOwed;
  }

  void carry(StateWords state) {
    degasOwed = state.carry(degasOwed);
    rest.carry(state);
  }
}
