package dev.tankwright.controller.sequence;

import dev.tankwright.controller.board.DeviceProfile;
import dev.tankwright.controller.board.HoldTimer;
import dev.tankwright.controller.board.NoticeKind;
import dev.tankwright.controller.board.Parameter;
import dev.tankwright.controller.board.StateWords;
import dev.tankwright.controller.sensing.Measurements;

/**
 * What is known of the solution: whether it must be degassed before it cleans, and how old it is. A
 * device that knows nothing owes degassing and counts the age from when it was powered up.
 */
final class Solution {
  private final Journal journal;
  private final int restMaximumMs;
  private final int ageMaximumMs;
  private final boolean ageRefuses;
  private final HoldTimer low;
  private boolean degasOwed = true;
  private int restMs;
  private int ageMs;

  Solution(DeviceProfile profile, Journal journal) {
    this.journal = journal;
    restMaximumMs = profile.get(Parameter.REST_MAXIMUM);
    ageMaximumMs = profile.get(Parameter.SOLUTION_AGE_MAXIMUM);
    ageRefuses = profile.get(Parameter.SOLUTION_AGE_REFUSES) == 1;
    low = new HoldTimer(profile.get(Parameter.DRY_TIME));
  }

  /**
   * Takes note of this scan: the solution ages; a long rest without ultrasound lets gas dissolve
   * again; a tank that was below its minimum and is filled up again holds gas.
   */
  void scan(boolean sounding, Measurements measured) {
    int dtMs = measured.dtMs();
    if (ageMs < ageMaximumMs) {
      age(dtMs);
    }
    if (sounding) {
      restMs = 0;
    } else if (restMs < restMaximumMs) {
      rest(dtMs);
    }
    if (!measured.isMinimumWet()) {
      low.run(true, dtMs);
    } else if (low.isExpired()) {
      refilled();
    }
  }

  private void age(int dtMs) {
    ageMs = Math.min(ageMaximumMs, ageMs + dtMs);
    if (isDue()) {
      journal.note(NoticeKind.SOLUTION_DUE, 0, 0);
    }
  }

  private void rest(int dtMs) {
    restMs = Math.min(restMaximumMs, restMs + dtMs);
    degasOwed |= restMs >= restMaximumMs;
  }

  private void refilled() {
    low.reset();
    degasOwed = true;
  }

  /** The tank was filled with fresh solution, or emptied. */
  void renewed() {
    degasOwed = true;
    ageMs = 0;
  }

  void degassed() {
    degasOwed = false;
    restMs = 0;
  }

  boolean isDegasOwed() {
    return degasOwed;
  }

  /** True when the solution has reached its age. */
  boolean isDue() {
    return ageMs >= ageMaximumMs;
  }

  /** True when a start is to be refused for the solution's age. */
  boolean refusesStart() {
    return ageRefuses && isDue();
  }

  /** Nothing is known any more: the worst is taken for true. */
  void forget() {
    degasOwed = true;
    ageMs = ageMaximumMs;
  }

  /** What passed while the power was off passed for the solution as well. */
  void pass(int seconds) {
    int ms = (int) Math.min(Integer.MAX_VALUE / 2, 1_000L * Math.max(0, seconds));
    ageMs = Math.min(ageMaximumMs, ageMs + ms);
    rest(ms);
  }

  void carry(StateWords state) {
    degasOwed = state.carry(degasOwed);
    restMs = state.carry(restMs);
    ageMs = state.carry(ageMs);
    low.carry(state);
  }
}
