package dev.tankwright.controller.board;

/**
 * Tells whether a condition has lasted long enough. Holds elapsed time, saturated at its limit, and
 * never a moment, so that states of the controller repeat. How late the scan is in which the
 * condition is first seen does not count: it cannot be known since when it holds.
 */
public final class HoldTimer {
  private static final int AT_REST = -1;

  private final int limitMs;
  private int elapsedMs = AT_REST;

  /**
   * Makes a timer at rest.
   *
   * @param limitMs how long the condition must last, ms; 0 lets it expire in the scan in which it
   *     is first seen
   */
  public HoldTimer(int limitMs) {
    this.limitMs = limitMs;
  }

  /**
   * Takes note of the condition in this scan. A condition that is seen for the first time has
   * lasted 0 ms.
   *
   * @param condition whether it holds
   * @param dtMs time since the previous scan, ms
   * @return true when it has lasted its limit
   */
  public boolean run(boolean condition, int dtMs) {
    if (!condition) {
      reset();
      return false;
    }
    if (elapsedMs < limitMs) {
      elapsedMs = elapsedMs == AT_REST ? 0 : Math.min(limitMs, elapsedMs + dtMs);
    }
    return isExpired();
  }

  /** True when the condition has lasted its limit. */
  public boolean isExpired() {
    return elapsedMs >= limitMs;
  }

  /** Back to rest. */
  public void reset() {
    elapsedMs = AT_REST;
  }

  /** Writes or reads the timer's state. */
  public void carry(StateWords state) {
    elapsedMs = state.carry(elapsedMs);
  }
}
