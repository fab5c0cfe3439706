package dev.tankwright.plant.properties;

/**
 * Properties of a film of dry air for convection, at the film's mean temperature.
 *
 * <p>Source: {@link AirViscosity}, {@link AirConductivity}, density as an ideal gas, and the
 * constant specific heat 1006 J/(kg K) of the ASHRAE Handbook, Fundamentals, chapter
 * Psychrometrics, which holds within 1 % from 250 to 400 K (from memory): that is the range. Total
 * pressure 50 to 300 kPa.
 */
public final class AirFilm {
  private static final double LOWEST_KELVIN = 250;
  private static final double HIGHEST_KELVIN = 400;
  private static final double LOWEST_PASCAL = 50e3;
  private static final double HIGHEST_PASCAL = 300e3;
  private static final double SPECIFIC_HEAT = 1006;
  private static final double GAS_CONSTANT = 287.042;
  private static final String SOURCE = "the air film";

  private AirFilm() {}

  /**
   * Prandtl number.
   *
   * @param kelvin film temperature, K, 250 to 400
   * @return dimensionless
   * @throws IllegalArgumentException outside this range
   */
  public static double prandtl(double kelvin) {
    checkTemperature(kelvin);
    return SPECIFIC_HEAT
        * AirViscosity.pascalSeconds(kelvin)
        / AirConductivity.wattsPerMetreKelvin(kelvin);
  }

  /**
   * Kinematic viscosity.
   *
   * @param kelvin film temperature, K, 250 to 400
   * @param pascal pressure, Pa, 50e3 to 300e3
   * @return m²/s
   * @throws IllegalArgumentException outside these ranges
   */
  public static double kinematicViscosity(double kelvin, double pascal) {
    double density = density(kelvin, pascal);
    return AirViscosity.pascalSeconds(kelvin) / density;
  }

  /**
   * Thermal diffusivity.
   *
   * @param kelvin film temperature, K, 250 to 400
   * @param pascal pressure, Pa, 50e3 to 300e3
   * @return m²/s
   * @throws IllegalArgumentException outside these ranges
   */
  public static double thermalDiffusivity(double kelvin, double pascal) {
    double density = density(kelvin, pascal);
    return AirConductivity.wattsPerMetreKelvin(kelvin) / (density * SPECIFIC_HEAT);
  }

  /**
   * Volume expansion coefficient of an ideal gas, 1/T.
   *
   * @param kelvin film temperature, K, 250 to 400
   * @return 1/K
   * @throws IllegalArgumentException outside this range
   */
  public static double expansionPerKelvin(double kelvin) {
    checkTemperature(kelvin);
    return 1 / kelvin;
  }

  private static double density(double kelvin, double pascal) {
    checkTemperature(kelvin);
    Range.check(pascal, LOWEST_PASCAL, HIGHEST_PASCAL, "Pa", SOURCE);
    return pascal / (GAS_CONSTANT * kelvin);
  }

  private static void checkTemperature(double kelvin) {
    Range.check(kelvin, LOWEST_KELVIN, HIGHEST_KELVIN, "K", SOURCE);
  }
}
