package dev.tankwright.plant.properties;

/**
 * Dynamic viscosity of dry air at low pressure.
 *
 * <p>Source: E. W. Lemmon and R. T Jacobsen, Viscosity and Thermal Conductivity Equations for
 * Nitrogen, Oxygen, Argon, and Air, Int. J. Thermophys. 25 (2004) 21–69: limit of zero density,
 * equations 2 and 3 with the Lennard-Jones values of air. At atmospheric pressure the viscosity is
 * 0.2 % higher. Range taken here 100 to 1000 K, within that of the source.
 */
public final class AirViscosity {
  static final double LOWEST_KELVIN = 100;
  static final double HIGHEST_KELVIN = 1000;
  static final String SOURCE = "Lemmon and Jacobsen 2004";

  private static final double GRAMS_PER_MOLE = 28.9586;
  private static final double DIAMETER_NANOMETRES = 0.360;
  private static final double WELL_KELVIN = 103.3;
  private static final double PASCAL_PER_MICROPASCAL = 1e-6;

  private AirViscosity() {}

  /**
   * Dynamic viscosity.
   *
   * @param kelvin temperature, K, 100 to 1000
   * @return Pa s
   * @throws IllegalArgumentException outside this range
   */
  public static double pascalSeconds(double kelvin) {
    Range.check(kelvin, LOWEST_KELVIN, HIGHEST_KELVIN, "K", SOURCE);
    double l = Math.log(kelvin / WELL_KELVIN);
    double collision =
        Math.exp(0.431 + l * (-0.4623 + l * (0.08406 + l * (0.005341 - l * 0.00331))));
    return PASCAL_PER_MICROPASCAL
        * 0.0266958
        * Math.sqrt(GRAMS_PER_MOLE * kelvin)
        / (DIAMETER_NANOMETRES * DIAMETER_NANOMETRES * collision);
  }
}
