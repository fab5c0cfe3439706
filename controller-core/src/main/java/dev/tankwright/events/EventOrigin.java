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
 * @param firstSequence sequence number of the first event: 1 for a new device, else the one after
 *     the last event of the power-up before, so that the device's numbers have no gap
 * @param simulated true when a simulator stands in for the device
 */
public record EventOrigin(
    String device, Instant start, String softwareVersion, long firstSequence, boolean simulated) {
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
    if (firstSequence < 1) {
      throw new IllegalArgumentException(
          "the first sequence number is " + firstSequence + "; it must be at least 1");
    }
    start = start.truncatedTo(ChronoUnit.MILLIS);
  }

  /** Value of the CloudEvents attribute {@code source}: a path, unique to the device. */
  public String source() {
    return "/tankwright/" + device;
  }

  /** Wall-clock time at a moment of the controller's uptime, ms. */
  public Instant at(long uptimeMs) {
    return start.plusMillis(uptimeMs);
  }
}
