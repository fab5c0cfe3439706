package dev.tankwright.controller;

import dev.tankwright.controller.board.DeviceProfile;
import dev.tankwright.controller.board.Parameter;

/**
 * What an ideal sensor and a 12-bit converter would read, in {@code double} and straight from IEC
 * 60751: the tests' own way from a temperature to a reading, independent of the integer code.
 */
public final class Converter {
  private static final double A = 3.9083e-3;
  private static final double B = -5.775e-7;
  private static final double C = -4.183e-12;

  private Converter() {}

  /** Resistance of a Pt1000, Ω, by Callendar and Van Dusen as IEC 60751 gives it. */
  public static double ohm(double celsius) {
    double t = celsius;
    double cubic = t < 0 ? C * (t - 100) * t * t * t : 0;
    return 1_000 * (1 + A * t + B * t * t + cubic);
  }

  /** The nearest reading of the converter at a temperature. */
  public static int counts(double celsius, DeviceProfile profile) {
    double low = profile.get(Parameter.SENSOR_RANGE_LOW) / 1_000.0;
    double high = profile.get(Parameter.SENSOR_RANGE_HIGH) / 1_000.0;
    long counts = Math.round((ohm(celsius) - low) / (high - low) * 4_095);
    return (int) Math.max(0, Math.min(4_095, counts));
  }
}
