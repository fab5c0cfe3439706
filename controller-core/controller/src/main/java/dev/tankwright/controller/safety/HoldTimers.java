package dev.tankwright.controller.safety;

import dev.tankwright.controller.board.Fault;
import dev.tankwright.controller.board.HoldTimer;
import dev.tankwright.controller.board.StateWords;

/**
 * How long each of many conditions has lasted, one bit of a word for each. A scan in which no
 * condition is there costs one comparison: that is nearly every scan. Elapsed times are saturated
 * at their limits, so that states of the controller repeat; a condition that is seen for the first
 * time has lasted 0 ms, for it cannot be known since when it holds.
 */
final class HoldTimers {
  private final int[] limitMs = new int[Fault.count()];
  private final int[] elapsedMs = new int[Fault.count()];
  private int running;

  /** Sets the limit of one condition, ms. */
  void limit(Fault fault, int ms) {
    limitMs[fault.ordinal()] = ms;
  }

  /** In what time the next of them reaches its limit if nothing changes, ms. */
  int expiresInMs() {
    int next = HoldTimer.NEVER;
    for (int left = running; left != 0; left &= left - 1) {
      int at = Integer.numberOfTrailingZeros(left);
      int in = limitMs[at] - elapsedMs[at];
      next = in > 0 ? Math.min(next, in) : next;
    }
    return next;
  }

  /** True while any condition is there. */
  boolean isRunning() {
    return running != 0;
  }

  /**
   * Takes note of the conditions of this scan.
   *
   * @param conditions one bit each, by {@link Fault#bit()}
   * @param dtMs time since the previous scan, ms
   * @return the conditions that have lasted their limits
   */
  int run(int conditions, int dtMs) {
    return (conditions | running) == 0 ? 0 : expired(conditions, dtMs);
  }

  private int expired(int conditions, int dtMs) {
    int expired = 0;
    for (int left = conditions; left != 0; left &= left - 1) {
      int at = Integer.numberOfTrailingZeros(left);
      boolean first = (running & (1 << at)) == 0;
      elapsedMs[at] = first ? 0 : Math.min(limitMs[at], elapsedMs[at] + dtMs);
      expired |= elapsedMs[at] >= limitMs[at] ? 1 << at : 0;
    }
    for (int ended = running & ~conditions; ended != 0; ended &= ended - 1) {
      elapsedMs[Integer.numberOfTrailingZeros(ended)] = 0;
    }
    running = conditions;
    return expired;
  }

  void carry(StateWords state) {
    running = state.carry(running);
    state.carry(elapsedMs);
  }
}
