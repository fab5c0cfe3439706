package dev.tankwright.events;

import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.regex.Pattern;

/**
 * Where the events of one power-up come from.
 *
 * @param device id of the device: letters, digits, dot, hyphen and underscore, beginning with a
 *     letter or digit, at most 64; stands in the source of every event
 * @param start wall-clock time at which the controller's uptime was 0; kept to the millisecond
 * @param softwareVersion version of the software that runs the device, not empty
 * @param simulated true when a simulator stands in for the device
 */
public record EventOrigin(String device, Instant start, String softwareVersion, boolean simulated) {
  private static final Pattern DEVICE = Pattern.compile("[A-Za-z0-9][A-Za-z0-9._-]{0,63}");

  /** Refuses an origin of which no valid event could come. */
  public EventOrigin {
    if (!DEVICE.matcher(device).matches()) {
      throw new IllegalArgumentException(
          "device id '"
              + device
              + "' must be 1 to 64 letters, digits, dots, hyphens and underscores,"
              + " beginning with a letter or digit");
    }
    softwareVersion = Text.clean("the software version", softwareVersion);
    if (softwareVersion.isEmpty()) {
      throw new IllegalArgumentException("the software version is empty; name it, as 0.1.0");
    }
    start = start.truncatedTo(ChronoUnit.MILLIS);
  }

  /** Value of the CloudEvents attribute {@code source}: a path, unique to the device. */
  public String source() {
    return sourceOf(device);
  }

  /** The source of a device's events. */
  public static String sourceOf(String device) {
    return "/tankwright/" + device;
  }

  /** The same with another clock: the given moment is now, at the given uptime, ms. */
  EventOrigin withClock(Instant now, long uptimeMs) {
    return new EventOrigin(device, now.minusMillis(uptimeMs), softwareVersion, simulated);
  }

  /** Wall-clock time at a moment of the controller's uptime, ms. */
  public Instant at(long uptimeMs) {
    return start.plusMillis(uptimeMs);
  }
}
