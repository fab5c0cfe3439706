package dev.tankwright.events.mqtt;

import java.time.Duration;
import java.util.function.LongSupplier;

/** How long a publisher that has been told to finish may continue. One thread. */
final class FinishDeadline {
  private static final Duration SHORTEST_GOODBYE = Duration.ofMillis(200);
  private static final Duration LONGEST_GOODBYE = Duration.ofSeconds(1);

  private final LongSupplier nanoTime;
  private boolean asked;
  private long deadline;

  FinishDeadline(LongSupplier nanoTime) {
    this.nanoTime = nanoTime;
  }

  /** The first call sets the deadline; later ones cannot move it. */
  void within(Duration limit) {
    if (!asked) {
      asked = true;
      deadline = nanoTime.getAsLong() + limit.toNanos();
    }
  }

  boolean isAsked() {
    return asked;
  }

  boolean isDue() {
    return asked && leftNanos() <= 0;
  }

  /** Nanoseconds to the deadline; far away as long as nobody asked. */
  long leftNanos() {
    return asked ? deadline - nanoTime.getAsLong() : Long.MAX_VALUE;
  }

  /** How long saying goodbye may take: what is left, within reason. */
  Duration goodbyeLimit() {
    Duration left = Duration.ofNanos(leftNanos());
    if (left.compareTo(SHORTEST_GOODBYE) < 0) {
      return SHORTEST_GOODBYE;
    }
    return left.compareTo(LONGEST_GOODBYE) > 0 ? LONGEST_GOODBYE : left;
  }
}
