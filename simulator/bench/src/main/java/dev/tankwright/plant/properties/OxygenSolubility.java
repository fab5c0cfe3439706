package dev.tankwright.plant.properties;

/**
 * Oxygen dissolved in fresh water in equilibrium with water-saturated air at 101.325 kPa, measured
 * more closely but over fewer temperatures than {@link AirSaturation} covers.
 *
 * <p>Source: Benson and Krause 1984, Limnol. Oceanogr. 29:620, equation 32, as used by APHA
 * Standard Methods 4500-O; range 0 to 40 °C.
 */
public final class OxygenSolubility {
  private static final double LOWEST_CELSIUS = 0;
  private static final double HIGHEST_CELSIUS = 40;

  private OxygenSolubility() {}

  /**
   * Concentration at saturation.
   *
   * @param celsius temperature, °C, 0 to 40
   * @return mg/L
   * @throws IllegalArgumentException outside the range of the equation
   */
  public static double milligramsPerLitre(double celsius) {
    Range.check(celsius, LOWEST_CELSIUS, HIGHEST_CELSIUS, "°C", "Benson and Krause 1984");
    double t = 1 / Celsius.toKelvin(celsius);
    double logarithm =
        -139.34411 + t * (1.575701e5 + t * (-6.642308e7 + t * (1.243800e10 - t * 8.621949e11)));
    return Math.exp(logarithm);
  }
}
