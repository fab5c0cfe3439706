package dev.tankwright.events.mqtt;

import java.util.regex.Pattern;

/**
 * What the retained status says of a device that is online.
 *
 * @param phase name of the phase that the device is in, or null while it is not known
 * @param faultPresent whether a fault is latched
 * @param outboxTrouble whether events wait in memory because they cannot be kept safely
 */
public record DeviceStatus(String phase, boolean faultPresent, boolean outboxTrouble) {
  /** Before the first fact is known. */
  public static final DeviceStatus UNKNOWN = new DeviceStatus(null, false, false);

  private static final Pattern NAME = Pattern.compile("[A-Z][A-Z0-9_]{0,63}");

  /** Refuses a phase that is no name; throws {@link IllegalArgumentException}. */
  public DeviceStatus {
    if (phase != null && !NAME.matcher(phase).matches()) {
      throw new IllegalArgumentException(
          "phase '"
              + phase
              + "' is not a name; use capitals, digits and underscores, as in CLEANING");
    }
  }

  /** The same with another word about the outbox. */
  public DeviceStatus withOutboxTrouble(boolean trouble) {
    return new DeviceStatus(phase, faultPresent, trouble);
  }
}
