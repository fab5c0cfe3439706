package dev.tankwright.report.text;

/**
 * Numbers with a fixed count of decimals, the same in every locale and quick from a cold start.
 * Halves are rounded up; a result of zero carries no sign.
 */
public final class Decimal {
  private static final long[] POWERS = {1, 10, 100, 1_000, 10_000, 100_000, 1_000_000};

  /** Above this the scaled value would leave a {@code long}'s exact range in a {@code double}. */
  private static final double LARGEST = 1e9;

  private Decimal() {}

  /** The number as text. */
  public static String of(double value, int decimals) {
    return append(new StringBuilder(16), value, decimals).toString();
  }

  /**
   * Appends the number; NaN and infinities by their Java names.
   *
   * @param decimals 0 to 6
   */
  public static StringBuilder append(StringBuilder out, double value, int decimals) {
    if (!(Math.abs(value) < LARGEST)) {
      return out.append(value);
    }
    long scaled = Math.round(value * POWERS[decimals]);
    if (scaled < 0) {
      out.append('-');
    }
    return appendScaled(out, Math.abs(scaled), decimals);
  }

  private static StringBuilder appendScaled(StringBuilder out, long scaled, int decimals) {
    out.append(scaled / POWERS[decimals]);
    if (decimals > 0) {
      out.append('.');
      long rest = scaled % POWERS[decimals];
      for (int place = decimals - 1; place >= 0; place--) {
        out.append((char) ('0' + rest / POWERS[place] % 10));
      }
    }
    return out;
  }
}
