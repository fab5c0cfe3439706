package dev.tankwright.events.mqtt;

import java.time.Duration;
import java.util.random.RandomGenerator;

/**
 * Waits between attempts to connect: doubling from {@code first} up to {@code longest}, each
 * shortened by chance to between half and the whole of it, so that many devices do not come back at
 * the same moment.
 *
 * @param first the wait after the first failure, at least 1 ms
 * @param longest no wait is longer
 */
public record Backoff(Duration first, Duration longest) {
  /** From 100 ms to 5 s. */
  public static final Backoff STANDARD = new Backoff(Duration.ofMillis(100), Duration.ofSeconds(5));

  /** Checks the range; throws {@link IllegalArgumentException}. */
  public Backoff {
    if (first.toMillis() < 1 || longest.compareTo(first) < 0) {
      throw new IllegalArgumentException(
          "back-off from " + first + " to " + longest + "; it must rise from at least 1 ms");
    }
  }

  /**
   * The wait before the next attempt.
   *
   * @param failures failed attempts in a row so far, at least 1
   */
  public Duration after(int failures, RandomGenerator random) {
    long full = longest.toMillis();
    int doublings = failures - 1;
    // a shift by more than this would overflow; the longest wait is reached well before
    if (doublings < 30) {
      full = Math.min(full, first.toMillis() << doublings);
    }
    long half = full / 2;
    return Duration.ofMillis(half + random.nextLong(full - half + 1));
  }
}
