package dev.tankwright.fleet;

/** A fleet's day as CSV (RFC 4180), a line for each device. Ids need no quotes. */
public final class FleetCsv {
  private static final String HEAD =
      "device,first-sequence,events,committed,missing,acknowledged,waiting\r\n";

  private FleetCsv() {}

  /** The whole text. */
  public static String of(FleetResult result) {
    StringBuilder text = new StringBuilder(HEAD);
    for (DeviceResult device : result.devices()) {
      text.append(
          "%s,%d,%d,%d,%d,%d,%d\r\n"
              .formatted(
                  device.device(),
                  device.firstSequence(),
                  device.composed(),
                  device.committed(),
                  device.missing(),
                  device.acknowledged(),
                  device.waiting()));
    }
    return text.toString();
  }
}
