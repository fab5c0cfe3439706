package dev.tankwright.campaign;

/**
 * How far a requirement stayed from failing, below 0 when it failed.
 *
 * @param value in the unit
 * @param unit the unit, empty for a share
 * @param requirement the requirement's name
 */
public record Margin(double value, String unit, String requirement) {
  /**
   * The margin as a share of what is a comfortable one in its unit: 100 ms, 1 min, 10 K, 1 L, 100
   * W, or all of a share. Only by this can margins of different units be put in an order; the
   * choice is ours, without a source.
   */
  public double comfort() {
    return value
        / switch (unit) {
          case "ms", "W" -> 100;
          case "s" -> 60;
          case "K" -> 10;
          default -> 1;
        };
  }

  /** The one with less comfort; the first when there is no difference. */
  static Margin less(Margin one, Margin other) {
    return one == null || (other != null && other.comfort() < one.comfort()) ? other : one;
  }
}
