package dev.tankwright.timeline;

import java.time.Duration;

/** Spans of simulated time. Stateless. */
public final class Times {
  private Times() {}

  /** Milliseconds. */
  public static Duration millis(long number) {
    return Duration.ofMillis(number);
  }

  /** Seconds. */
  public static Duration seconds(long number) {
    return Duration.ofSeconds(number);
  }

  /** Minutes. */
  public static Duration minutes(long number) {
    return Duration.ofMinutes(number);
  }

  /** Hours. */
  public static Duration hours(long number) {
    return Duration.ofHours(number);
  }
}
