package dev.tankwright.plant.properties;

/** Refuses values at which a correlation was not published to hold. */
final class Range {
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
    // Written so that NaN, which compares false with everything, is refused too.
    if (!(value >= lowest && value <= highest)) {
      throw new IllegalArgumentException(
          value
              + " "
              + unit
              + " is outside the range of "
              + source
              + ": "
              + lowest
              + " to "
              + highest
              + " "
              + unit);
    }
  }
}
