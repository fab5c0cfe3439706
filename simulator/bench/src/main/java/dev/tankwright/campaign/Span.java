package dev.tankwright.campaign;

/**
 * A range of a number.
 *
 * @param low its lower end
 * @param high its upper end, at least {@code low}
 */
public record Span(double low, double high) {
  /** Checks the order. */
  public Span {
    if (!(low <= high)) {
      throw new IllegalArgumentException("a range cannot go from " + low + " to " + high);
    }
  }

  /** A span of one value. */
  public static Span of(double value) {
    return new Span(value, value);
  }

  /** True when there is but one value. */
  public boolean isPoint() {
    return low == high;
  }

  /**
   * The value at a share of the way from the lower end to the upper one.
   *
   * @param share 0–1; what lies outside is taken for the nearer end
   */
  public double at(double share) {
    return low + (high - low) * Math.max(0, Math.min(1, share));
  }
}
