package dev.tankwright.plant.properties;

/**
 * Oxygen dissolved in fresh water in equilibrium with water-saturated air at 101.325 kPa.
 *
 * <p>Source: Benson and Krause 1984, equation 32, as used by APHA Standard Methods 4500-O; range 0
 * to 40 °C. Between 40 °C and 60 °C the same equation agrees within about 1 % with the Henry's
 * constants of IAPWS G7-04 and is taken as an estimate; beyond, the value at 60 °C is kept, an
 * estimate too.
 */
public final class OxygenSolubility {
  /** Highest temperature of the published range, °C. */
  public static final double PUBLISHED_TO_CELSIUS = 40;

  /** Highest temperature at which the equation is used as an estimate, °C. */
  public static final double ESTIMATED_TO_CELSIUS = 60;

  private OxygenSolubility() {}

  /**
   * Concentration at saturation.
   *
   * @param celsius temperature, °C, at least 0
   * @return mg/L
   * @throws IllegalArgumentException below 0 °C
   */
  public static double milligramsPerLitre(double celsius) {
    if (!(celsius >= 0)) {
      throw new IllegalArgumentException(
          celsius + " °C is below the range of Benson and Krause, 0 to 40 °C");
    }
    double t = 1 / Celsius.toKelvin(Math.min(celsius, ESTIMATED_TO_CELSIUS));
    double logarithm =
        -139.34411 + t * (1.575701e5 + t * (-6.642308e7 + t * (1.243800e10 - t * 8.621949e11)));
    return Math.exp(logarithm);
  }
}
