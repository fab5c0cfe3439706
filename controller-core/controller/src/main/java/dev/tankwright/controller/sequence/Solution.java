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
  private boolean wasLow;
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
  void scan(boolean sounding, Measurements measured) {
    int dtMs = measured.dtMs();
    if (ageMs < ageMaximumMs) {
      age(dtMs);
    }
    if (!sounding) {
      rest(dtMs);
    } else if (restMs != 0) {
      restMs = 0;
    }
    if (wasLow || !measured.isMinimumWet()) {
      level(measured.isMinimumWet(), dtMs);
    }
  }

  /** In what time anything becomes due if nothing changes, ms. */
  int changesInMs(boolean sounding) {
    int aged = ageMs < ageMaximumMs ? ageMaximumMs - ageMs : HoldTimer.NEVER;
    boolean rests = !sounding && restMs < restMaximumMs;
    return Math.min(aged, rests ? restMaximumMs - restMs : HoldTimer.NEVER);
  }

  private void age(int dtMs) {
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
      dues.set(Dues.DEGAS_OWED);
    }
  }

  // A splash is no refill: the level must have been low for its time.
  private void level(boolean wet, int dtMs) {
    if (wet && low.isExpired()) {
      dues.set(Dues.DEGAS_OWED);
    }
    low.run(!wet, dtMs);
    wasLow = !wet;
  }

  /** The tank was filled with fresh solution, or emptied. */
  void renewed() {
    dues.set(Dues.DEGAS_OWED);
    dues.clear(Dues.SOLUTION);
    ageMs = 0;
  }

  void degassed() {
    dues.clear(Dues.DEGAS_OWED);
    restMs = 0;
  }

  boolean isDegasOwed() {
    return dues.has(Dues.DEGAS_OWED);
  }

  /** True when a start is to be refused for the solution's age. */
  boolean refusesStart() {
    return ageRefuses && dues.has(Dues.SOLUTION);
  }

  /** Nothing is known any more: the worst is taken for true. */
  void forget() {
    dues.set(Dues.DEGAS_OWED | Dues.SOLUTION);
    ageMs = ageMaximumMs;
  }

  /** What passed while the power was off passed for the solution as well. */
  void pass(int seconds) {
    int ms = (int) Math.min(Integer.MAX_VALUE / 2, 1_000L * Math.max(0, seconds));
    if (ageMs < ageMaximumMs) {
      age(ms);
    }
    rest(ms);
  }

  void carry(StateWords state) {
    restMs = state.carry(restMs);
    ageMs = state.carry(ageMs);
    low.carry(state);
    wasLow = state.carry(wasLow);
  }
}
