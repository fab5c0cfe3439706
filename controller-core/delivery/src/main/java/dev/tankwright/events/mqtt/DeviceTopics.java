package dev.tankwright.events.mqtt;

import java.util.regex.Pattern;

/**
 * The two topics of one device.
 *
 * @param device the device's id: 1 to 64 of letters, digits, dot, hyphen, underscore, so that it is
 *     one level of a topic name and needs no escaping in JSON
 */
public record DeviceTopics(String device) {
  private static final Pattern DEVICE = Pattern.compile("[A-Za-z0-9._-]{1,64}");

  /**
   * Checks the device id; throws {@link IllegalArgumentException} that says what would be right.
   */
  public DeviceTopics {
    if (device == null || !DEVICE.matcher(device).matches()) {
      throw new IllegalArgumentException(
          "device id '%s' cannot be part of a topic; use 1 to 64 of A-Z a-z 0-9 . _ -"
              .formatted(device));
    }
  }

  /** Where the cycle events go. */
  public String events() {
    return "tankwright/" + device + "/events";
  }

  /** Where the retained status is. */
  public String status() {
    return "tankwright/" + device + "/status";
  }
}
