package dev.tankwright.plant.properties;

/**
 * Resistance of a platinum sensor over its resistance at 0 °C, and what its class allows.
 *
 * <p>Source: IEC 60751:2022 (the same as 2008), equation of Callendar and Van Dusen, R(t)/R0 = 1 +
 * A t + B t² from 0 °C up and with C (t − 100) t³ below; range −200 to 850 °C. Classes A, ±(0.15 +
 * 0.002 |t|) K, and B, ±(0.3 + 0.005 |t|) K, in the ranges for wire-wound sensors, −100 to 450 °C
 * and −196 to 600 °C (ranges from memory).
 */
public final class PlatinumResistance {
  private static final double LOWEST_CELSIUS = -200;
  private static final double HIGHEST_CELSIUS = 850;
  private static final double A = 3.9083e-3;
  private static final double B = -5.775e-7;
  private static final double C = -4.183e-12;

  private PlatinumResistance() {}

  /**
   * Resistance over that at 0 °C: times 100 Ω for a Pt100, times 1000 Ω for a Pt1000.
   *
   * @param celsius temperature, °C, −200 to 850
   * @return dimensionless
   * @throws IllegalArgumentException outside the range of the standard
   */
  public static double ratio(double celsius) {
    Range.check(celsius, LOWEST_CELSIUS, HIGHEST_CELSIUS, "°C", "IEC 60751");
    double t = celsius;
    double below = t < 0 ? C * (t - 100) * t * t * t : 0;
    return 1 + t * (A + t * B) + below;
  }

  /**
   * Largest error of a class A sensor, either way.
   *
   * @param celsius temperature, °C, −100 to 450
   * @return K
   * @throws IllegalArgumentException outside the range of the class
   */
  public static double classAKelvin(double celsius) {
    Range.check(celsius, -100, 450, "°C", "class A of IEC 60751");
    return 0.15 + 0.002 * Math.abs(celsius);
  }

  /**
   * Largest error of a class B sensor, either way.
   *
   * @param celsius temperature, °C, −196 to 600
   * @return K
   * @throws IllegalArgumentException outside the range of the class
   */
  public static double classBKelvin(double celsius) {
    Range.check(celsius, -196, 600, "°C", "class B of IEC 60751");
    return 0.3 + 0.005 * Math.abs(celsius);
  }
}
