package dev.tankwright.fleet;

import dev.tankwright.events.mqtt.BrokerAccess;
import dev.tankwright.events.mqtt.DeviceTopics;
import java.nio.file.Path;
import java.time.Duration;

/**
 * What a fleet is.
 *
 * @param devices how many baths, 1 to {@value #MOST_DEVICES}
 * @param prefix what their ids begin with; a number follows
 * @param seed seed of all their days
 * @param speed simulated seconds per second, above 0; {@link #FULL_SPEED} for as fast as it goes
 * @param dayMillis length of the day, ms, {@value #SHORTEST_MILLIS} to {@value #LONGEST_MILLIS}
 * @param outboxes folder of their outboxes; it exists
 * @param access where the broker is
 * @param threads how many threads simulate, at least 1
 * @param drain how long the last events may wait for their acknowledgement once the day is over
 * @param version version of the software, for the events
 */
public record FleetSettings(
    int devices,
    String prefix,
    long seed,
    double speed,
    long dayMillis,
    Path outboxes,
    BrokerAccess access,
    int threads,
    Duration drain,
    String version) {
  /** As fast as it goes. */
  public static final double FULL_SPEED = Double.POSITIVE_INFINITY;

  /** Most devices of a fleet. */
  public static final int MOST_DEVICES = 9_999;

  /** Shortest day, ms: a quarter of an hour. */
  public static final long SHORTEST_MILLIS = 900_000;

  /** Longest day, ms: sixteen hours, so that it ends before midnight. */
  public static final long LONGEST_MILLIS = 57_600_000;

  /** Checks the ranges; throws {@link IllegalArgumentException}. */
  public FleetSettings {
    if (devices < 1 || devices > MOST_DEVICES) {
      throw new IllegalArgumentException(
          devices + " devices are not a fleet; give 1 to " + MOST_DEVICES);
    }
    if (!(speed > 0)) {
      throw new IllegalArgumentException(
          "a speed of " + speed + " is not allowed; give a number above 0");
    }
    if (dayMillis < SHORTEST_MILLIS || dayMillis > LONGEST_MILLIS) {
      throw new IllegalArgumentException(
          "a day of " + dayMillis / 3_600_000.0 + " h; it must last from 0.25 to 16 h");
    }
    if (threads < 1 || drain.isNegative()) {
      throw new IllegalArgumentException(
          threads + " threads and " + drain + " to drain; give at least 1, and no negative time");
    }
    new DeviceTopics(name(prefix, devices));
  }

  /** Id of a device, by its number from 1. */
  String device(int number) {
    return name(prefix, number);
  }

  private static String name(String prefix, int number) {
    return "%s%04d".formatted(prefix, number);
  }
}
