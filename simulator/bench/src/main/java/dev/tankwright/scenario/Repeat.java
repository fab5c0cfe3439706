package dev.tankwright.scenario;

import java.util.OptionalLong;

/**
 * How an entry of the timeline is done again and again.
 *
 * @param everyMillis from one time to the next, ms, 10 or more
 * @param times how often it is done in all, 1 or more; empty for without end
 * @param untilMillis the latest moment at which it is due, ms since the start of the run; empty for
 *     the run's end
 */
public record Repeat(long everyMillis, OptionalLong times, OptionalLong untilMillis) {
  /** The shortest time from one to the next, ms: the loop's step. */
  public static final long SHORTEST_MILLIS = 10;

  /**
   * Checks its numbers.
   *
   * @throws IllegalArgumentException when one is out of range
   */
  public Repeat {
    if (everyMillis < SHORTEST_MILLIS || times.orElse(1) < 1) {
      throw new IllegalArgumentException(
          "every " + everyMillis + " ms, " + times + " times is no way to repeat an entry");
    }
  }

  /** True when it comes to an end before the run does. */
  public boolean isBounded() {
    return times.isPresent() || untilMillis.isPresent();
  }

  /** True when a time that would be due then is one more. */
  public boolean allows(long timesDone, long dueMillis) {
    return timesDone < times.orElse(Long.MAX_VALUE)
        && dueMillis <= untilMillis.orElse(Long.MAX_VALUE);
  }
}
