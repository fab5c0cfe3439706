package dev.tankwright.events.outbox;

import java.time.Duration;

/**
 * How an outbox commits and what it keeps.
 *
 * @param groupEvents most events in one commit, at least 1
 * @param groupWait how long a commit waits for more events once there is one; zero takes what is
 *     there, which groups by itself while the commit before is being written
 * @param waitingEvents most events that wait in memory to be committed, at least 1; what comes
 *     beyond is refused
 * @param keepFor how long an acknowledged event is kept for those who look back
 * @param keepBytes size of the file's content in bytes above which acknowledged events go earlier,
 *     the oldest first
 * @param mostBytes size of the file in bytes that is never exceeded, as if the disk ended there; 0
 *     for no limit but the disk's
 */
public record OutboxSettings(
    int groupEvents,
    Duration groupWait,
    int waitingEvents,
    Duration keepFor,
    long keepBytes,
    long mostBytes) {
  /** Groups of up to 256 as they come, 10 000 waiting, kept for 30 days or up to 64 MiB. */
  public static final OutboxSettings STANDARD =
      new OutboxSettings(256, Duration.ZERO, 10_000, Duration.ofDays(30), 64L << 20, 0);

  private static final long LEAST_BYTES = 64 * 1024;

  /** Checks the ranges; throws {@link IllegalArgumentException}. */
  public OutboxSettings {
    if (groupEvents < 1 || waitingEvents < 1) {
      throw new IllegalArgumentException(
          "groups of %d and %d waiting events; both must be at least 1"
              .formatted(groupEvents, waitingEvents));
    }
    if (groupWait.isNegative() || keepFor.isNegative()) {
      throw new IllegalArgumentException(
          "times of %s and %s; neither may be negative".formatted(groupWait, keepFor));
    }
    if (keepBytes < 0 || (mostBytes != 0 && mostBytes < LEAST_BYTES)) {
      throw new IllegalArgumentException(
          "sizes of %d and %d bytes; the first must be at least 0, the second 0 or at least %d"
              .formatted(keepBytes, mostBytes, LEAST_BYTES));
    }
  }

  /** The same with other grouping. */
  public OutboxSettings withGroups(int events, Duration wait) {
    return new OutboxSettings(events, wait, waitingEvents, keepFor, keepBytes, mostBytes);
  }

  /** The same with another number of events that may wait. */
  public OutboxSettings withWaiting(int events) {
    return new OutboxSettings(groupEvents, groupWait, events, keepFor, keepBytes, mostBytes);
  }

  /** The same with other retention. */
  public OutboxSettings withRetention(Duration time, long bytes) {
    return new OutboxSettings(groupEvents, groupWait, waitingEvents, time, bytes, mostBytes);
  }

  /** The same with another limit of the file. */
  public OutboxSettings withMostBytes(long bytes) {
    return new OutboxSettings(groupEvents, groupWait, waitingEvents, keepFor, keepBytes, bytes);
  }
}
