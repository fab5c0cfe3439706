package dev.tankwright.events;

import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneOffset;

/**
 * Moments as RFC 3339 writes them, in UTC with three decimals of the second. By hand, because the
 * formatters of the platform drop zero decimals and take long to load in a fresh virtual machine.
 */
final class Rfc3339 {
  private static final int LAST_YEAR = 9999;
  private static final int NANOS_PER_MILLI = 1_000_000;

  private Rfc3339() {}

  /**
   * A moment, cut to the millisecond.
   *
   * @throws IllegalArgumentException when the year has not four digits, as RFC 3339 wants
   */
  static String format(Instant moment) {
    LocalDateTime utc = LocalDateTime.ofEpochSecond(moment.getEpochSecond(), 0, ZoneOffset.UTC);
    if (utc.getYear() < 0 || utc.getYear() > LAST_YEAR) {
      throw new IllegalArgumentException(
          "the year " + utc.getYear() + " cannot be written in RFC 3339; it takes 0 to 9999");
    }
    StringBuilder text = new StringBuilder(24);
    pad(text, utc.getYear(), 4).append('-');
    pad(text, utc.getMonthValue(), 2).append('-');
    pad(text, utc.getDayOfMonth(), 2).append('T');
    pad(text, utc.getHour(), 2).append(':');
    pad(text, utc.getMinute(), 2).append(':');
    pad(text, utc.getSecond(), 2).append('.');
    return pad(text, moment.getNano() / NANOS_PER_MILLI, 3).append('Z').toString();
  }

  private static StringBuilder pad(StringBuilder text, int value, int width) {
    return Padding.append(text, value, width);
  }
}
