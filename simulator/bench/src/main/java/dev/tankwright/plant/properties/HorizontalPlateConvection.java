package dev.tankwright.plant.properties;

/**
 * Natural convection above a warm horizontal plate, as a water surface in cooler air.
 *
 * <p>Source: form of W. H. McAdams, Heat Transmission, 3rd ed. 1954, with the constants in use
 * since Lloyd and Moran 1974 (J. Heat Transfer 96:443), both from memory: Nu = 0.54 Ra^(1/4) for Ra
 * 1e4 to 1e7 and 0.15 Ra^(1/3) for 1e7 to 1e11; characteristic length area by perimeter, properties
 * at the film temperature. Range Ra 1e4 to 1e11, gases and water (Pr 0.7 and up). The two branches
 * differ by 6 % where they meet.
 */
public final class HorizontalPlateConvection {
  /** Lowest Rayleigh number of the correlation; with less, conduction is no longer negligible. */
  public static final double LOWEST_RAYLEIGH = 1e4;

  /** Highest Rayleigh number of the correlation. */
  public static final double HIGHEST_RAYLEIGH = 1e11;

  private static final double TURBULENT_RAYLEIGH = 1e7;

  private HorizontalPlateConvection() {}

  /**
   * Mean Nusselt number over the plate.
   *
   * @param rayleigh Rayleigh number, 1e4 to 1e11
   * @return dimensionless
   * @throws IllegalArgumentException outside this range
   */
  public static double nusselt(double rayleigh) {
    Range.check(rayleigh, LOWEST_RAYLEIGH, HIGHEST_RAYLEIGH, "(Rayleigh number)", "McAdams 1954");
    return rayleigh < TURBULENT_RAYLEIGH
        ? 0.54 * Math.sqrt(Math.sqrt(rayleigh))
        : 0.15 * Math.cbrt(rayleigh);
  }
}
