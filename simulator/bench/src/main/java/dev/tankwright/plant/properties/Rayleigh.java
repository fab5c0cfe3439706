package dev.tankwright.plant.properties;

/**
 * Rayleigh number, Ra = g β ΔT L³ / (ν a): how strongly buoyancy drives a fluid along a surface.
 *
 * <p>Source: definition (ISO 80000-11), with the standard acceleration of free fall.
 */
public final class Rayleigh {
  private static final String SOURCE = "the Rayleigh number";

  private Rayleigh() {}

  /**
   * Rayleigh number.
   *
   * @param expansionPerKelvin volume expansion coefficient of the fluid, 1/K, at least 0
   * @param differenceKelvin temperature difference between surface and fluid, without its sign, K
   * @param metres characteristic length of the surface, m, above 0
   * @param kinematicViscosity m²/s, above 0
   * @param thermalDiffusivity m²/s, above 0
   * @return dimensionless, at least 0
   * @throws IllegalArgumentException outside these ranges
   */
  public static double number(
      double expansionPerKelvin,
      double differenceKelvin,
      double metres,
      double kinematicViscosity,
      double thermalDiffusivity) {
    Range.checkNotNegative(expansionPerKelvin, "1/K expansion", SOURCE);
    Range.checkNotNegative(differenceKelvin, "K difference", SOURCE);
    Range.checkPositive(metres, "m length", SOURCE);
    Range.checkPositive(kinematicViscosity, "m²/s viscosity", SOURCE);
    Range.checkPositive(thermalDiffusivity, "m²/s diffusivity", SOURCE);
    return Gravity.METRES_PER_SECOND_SQUARED
        * expansionPerKelvin
        * differenceKelvin
        / kinematicViscosity
        * (metres * metres * metres)
        / thermalDiffusivity;
  }
}
