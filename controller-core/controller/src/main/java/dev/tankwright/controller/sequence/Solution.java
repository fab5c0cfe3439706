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
  private final Dues dues;
  private final Journal journal;
  private final int restMaximumMs;
  private final int ageMaximumMs;
  private final boolean ageRefuses;
  private final HoldTimer low;
  private int restMs;
  private int ageMs;

  Solution(DeviceProfile profile, Dues dues, Journal journal) {
    this.dues = dues;
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
  void scan(boolean sonicating, Measurements measured) {
    int dtMs = measured.dtMs();
    age(dtMs);
    if (sonicating) {
      restMs = 0;
    } else {
      rest(dtMs);
    }
    level(measured.isMinimumWet(), dtMs);
  }

  private void age(int dtMs) {
    if (ageMs == ageMaximumMs) {
      return;
    }
    ageMs += dtMs;
    if (ageMs >= ageMaximumMs) {
      ageMs = ageMaximumMs;
      dues.set(Dues.SOLUTION);
      journal.note(NoticeKind.SOLUTION_DUE, 0, 0);
    }
  }

  private void rest(int dtMs) {
    restMs = Math.min(restMaximumMs, restMs + dtMs);
    if (restMs == restMaximumMs) {
      dues.set(Dues.DEGASSING_REQUIRED);
    }
  }

  // A splash is no refill: the level must have been low for its time.
  private void level(boolean wet, int dtMs) {
    if (wet && low.isExpired()) {
      dues.set(Dues.DEGASSING_REQUIRED);
    }
    low.run(!wet, dtMs);
  }

  /** The tank was filled with fresh solution, or emptied. */
  void renewed() {
    dues.set(Dues.DEGASSING_REQUIRED);
    dues.clear(Dues.SOLUTION);
    ageMs = 0;
  }

  void degassed() {
    dues.clear(Dues.DEGASSING_REQUIRED);
    restMs = 0;
  }

  boolean isDegassingRequired() {
    return dues.has(Dues.DEGASSING_REQUIRED);
  }

  /** True when a start is to be refused for the solution's age. */
  boolean refusesStart() {
    return ageRefuses && dues.has(Dues.SOLUTION);
  }

  /** Nothing is known any more: the worst is taken for true. */
  void assumeWorst() {
    dues.set(Dues.DEGASSING_REQUIRED | Dues.SOLUTION);
    ageMs = ageMaximumMs;
  }

  /** What passed while the power was off passed for the solution as well. */
  void pass(int seconds) {
    int ms = (int) Math.min(Integer.MAX_VALUE / 2, 1_000L * Math.max(0, seconds));
    age(ms);
    rest(ms);
  }

  void carry(StateWords state) {
    restMs = state.carry(restMs);
    ageMs = state.carry(ageMs);
    low.carry(state);
  }
}
