package dev.tankwright.controller.board;

/**
 * Tells whether a condition has lasted long enough. Holds elapsed time, saturated at its limit, and
 * never a moment, so that states of the controller repeat.
 */
public final class HoldTimer {
  private final int limitMs;
  private int elapsedMs;
  private boolean expired;

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
    if (!expired) {
      expired = elapsedMs >= limitMs;
      elapsedMs = Math.min(limitMs, elapsedMs + dtMs);
    }
    return expired;
  }

  /** True when the condition has lasted its limit. */
  public boolean isExpired() {
    return expired;
  }

  /** Back to rest. */
  public void reset() {
    elapsedMs = 0;
    expired = false;
  }

  /** Writes or reads the timer's state. */
  public void carry(StateWords state) {
    elapsedMs = state.carry(elapsedMs);
    expired = state.carry(expired);
  }
}
