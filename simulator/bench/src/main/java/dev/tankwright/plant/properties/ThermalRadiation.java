package dev.tankwright.plant.properties;

/**
 * Heat radiated by a grey surface.
 *
 * <p>Source: law of Stefan and Boltzmann, σ = 5.670374419e-8 W/(m² K⁴), CODATA 2018 (exact since
 * the SI of 2019). Range 0 to 1000 K (an estimate of where a surface of a bath still exists),
 * emissivity 0 to 1.
 */
public final class ThermalRadiation {
  /** Stefan–Boltzmann constant, W/(m² K⁴). */
  public static final double STEFAN_BOLTZMANN = 5.670374419e-8;

  private static final double HIGHEST_KELVIN = 1000;
  private static final String SOURCE = "thermal radiation";

  private ThermalRadiation() {}

  /**
   * Net heat from a surface to surroundings much larger than itself.
   *
   * @param emissivity of the surface, 0 to 1
   * @param surfaceKelvin temperature of the surface, K, 0 to 1000
   * @param surroundingsKelvin temperature of what it faces, K, 0 to 1000
   * @return W/m², negative when the surface is the colder one
   * @throws IllegalArgumentException outside these ranges
   */
  public static double wattsPerSquareMetre(
      double emissivity, double surfaceKelvin, double surroundingsKelvin) {
    Range.check(emissivity, 0, 1, "(emissivity)", SOURCE);
    Range.check(surfaceKelvin, 0, HIGHEST_KELVIN, "K", SOURCE);
    Range.check(surroundingsKelvin, 0, HIGHEST_KELVIN, "K", SOURCE);
    return emissivity
        * STEFAN_BOLTZMANN
        * (fourthPower(surfaceKelvin) - fourthPower(surroundingsKelvin));
  }

  private static double fourthPower(double x) {
    return x * x * x * x;
  }
}
