package dev.tankwright.plant.properties;

/**
 * Natural convection along a vertical plate at one temperature.
 *
 * <p>Source: S. W. Churchill and H. H. S. Chu, Correlating equations for laminar and turbulent free
 * convection from a vertical plate, Int. J. Heat Mass Transfer 18 (1975) 1323–1329, the form for
 * all Rayleigh numbers; characteristic length the height, properties at the film temperature. Range
 * Ra 0 to 1e12, any Prandtl number above 0.
 */
public final class VerticalPlateConvection {
  /** Highest Rayleigh number of the correlation. */
  public static final double HIGHEST_RAYLEIGH = 1e12;

  private static final String SOURCE = "Churchill and Chu 1975";

  private VerticalPlateConvection() {}

  /**
   * Mean Nusselt number over the height.
   *
   * @param rayleigh Rayleigh number, 0 to 1e12
   * @param prandtl Prandtl number, above 0
   * @return dimensionless
   * @throws IllegalArgumentException outside these ranges
   */
  public static double nusselt(double rayleigh, double prandtl) {
    Range.check(rayleigh, 0, HIGHEST_RAYLEIGH, "(Rayleigh number)", SOURCE);
    Range.checkPositive(prandtl, "(Prandtl number)", SOURCE);
    double fluid = Math.pow(1 + Math.pow(0.492 / prandtl, 9.0 / 16), 8.0 / 27);
    double root = 0.825 + 0.387 * Math.pow(rayleigh, 1.0 / 6) / fluid;
    return root * root;
  }
}
