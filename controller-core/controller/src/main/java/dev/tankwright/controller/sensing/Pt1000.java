package dev.tankwright.controller.sensing;

/**
 * Platinum resistance thermometer of 1000 Ω at 0 °C, in integers.
 *
 * <p>Source: IEC 60751 (2008, 2022), Callendar–Van Dusen: R(t) = R0 (1 + A t + B t²) for t from 0
 * °C up to 850 °C, and R(t) = R0 (1 + A t + B t² + C (t − 100 °C) t³) for t from −200 °C to 0 °C,
 * with A = 3.9083e-3 /°C, B = −5.775e-7 /°C², C = −4.183e-12 /°C⁴.
 */
public final class Pt1000 {
  /** Lowest temperature of the standard, m°C. */
  public static final int LOWEST_MILLI_C = -200_000;

  /** Highest temperature of the standard, m°C. */
  public static final int HIGHEST_MILLI_C = 850_000;

  private static final long R0_MILLI_OHM = 1_000_000L;

  private Pt1000() {}

  /**
   * Resistance at a temperature.
   *
   * @param milliC temperature, m°C, {@link #LOWEST_MILLI_C} to {@link #HIGHEST_MILLI_C}
   * @return mΩ, rounded to the nearest
   * @throws IllegalArgumentException outside the standard's range
   */
  public static int milliOhm(int milliC) {
    if (milliC < LOWEST_MILLI_C || milliC > HIGHEST_MILLI_C) {
      throw new IllegalArgumentException(
          milliC + " m°C is outside the range of IEC 60751, -200000 to 850000 m°C");
    }
    // In units of 1e-6 mΩ: A R0 t = 3.9083 mΩ per m°C, B R0 t² = −5.775e-7 mΩ per m°C².
    long t = milliC;
    long micro = 3_908_300L * t - roundedDivision(5_775L * t * t, 10_000L);
    if (milliC < 0) {
      micro -= cubicTerm(t);
    }
    return (int) (R0_MILLI_OHM + roundedDivision(micro, 1_000_000L));
  }

  /**
   * Temperature at a resistance: the inverse of {@link #milliOhm}, to 1 m°C, by bisection. Meant
   * for building tables, not for the scan.
   *
   * @param milliOhm resistance, mΩ; values beyond the standard's range give its nearest end
   * @return m°C
   */
  public static int milliCelsius(int milliOhm) {
    if (milliOhm <= milliOhm(LOWEST_MILLI_C)) {
      return LOWEST_MILLI_C;
    }
    return milliCelsius(milliOhm, LOWEST_MILLI_C, HIGHEST_MILLI_C);
  }

  /**
   * As {@link #milliCelsius(int)}, where it is known between which temperatures the answer lies.
   *
   * @param from m°C, at or below the answer
   * @param to m°C, above the answer unless it is the standard's upper end
   */
  static int milliCelsius(int milliOhm, int from, int to) {
    int low = from;
    int high = to;
    while (high - low > 1) {
      int middle = low + (high - low) / 2;
      if (milliOhm(middle) <= milliOhm) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return milliOhm(high) - milliOhm <= milliOhm - milliOhm(low) ? high : low;
  }

  // C R0 (t − 100 °C) t³ in 1e-6 mΩ; taken in two factors because the whole product overflows 64
  // bits.
  private static long cubicTerm(long t) {
    long first = (t - 100_000L) * t / 1_000L;
    long second = t * t / 1_000L;
    return roundedDivision(roundedDivision(first * second, 1_000_000L) * 4_183L, 1_000L);
  }

  private static long roundedDivision(long value, long by) {
    return Math.floorDiv(value + by / 2, by);
  }
}
