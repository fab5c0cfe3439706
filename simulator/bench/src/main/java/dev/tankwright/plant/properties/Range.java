package dev.tankwright.plant.properties;

/**
 * Refuses values at which a correlation was not published to hold. Every comparison is written so
 * that NaN, which compares false with everything, is refused too.
 */
final class Range {
  private static final double DECIMALS = 1e6;

  private Range() {}

  /**
   * Checks that a value lies within a range, its ends included.
   *
   * @param value what was asked for
   * @param lowest lower end
   * @param highest upper end
   * @param unit unit of all three, with what they measure if the unit does not tell
   * @param source the correlation whose range it is
   * @throws IllegalArgumentException outside the range, and for NaN
   */
  static void check(double value, double lowest, double highest, String unit, String source) {
    if (!(value >= lowest && value <= highest)) {
      String range = readable(lowest) + " to " + readable(highest) + " " + unit;
      throw refusal(value, unit, source, range);
    }
  }

  /**
   * Checks that a value is above zero and finite.
   *
   * @throws IllegalArgumentException if it is not
   */
  static void checkPositive(double value, String unit, String source) {
    if (!(value > 0 && value <= Double.MAX_VALUE)) {
      throw refusal(value, unit, source, "above 0 and finite");
    }
  }

  /**
   * Checks that a value is zero or above and finite.
   *
   * @throws IllegalArgumentException if it is not
   */
  static void checkNotNegative(double value, String unit, String source) {
    if (!(value >= 0 && value <= Double.MAX_VALUE)) {
      throw refusal(value, unit, source, "at least 0 and finite");
    }
  }

  private static IllegalArgumentException refusal(
      double value, String unit, String source, String range) {
    return new IllegalArgumentException(
        value + " " + unit + " is outside the range of " + source + ": " + range);
  }

  /** An end of a range without the rounding of its conversion from °C. */
  private static double readable(double end) {
    return Math.rint(end * DECIMALS) / DECIMALS;
  }
}
