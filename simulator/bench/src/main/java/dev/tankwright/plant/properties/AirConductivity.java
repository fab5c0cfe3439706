package dev.tankwright.plant.properties;

/**
 * Thermal conductivity of dry air at low pressure.
 *
 * <p>Source: E. W. Lemmon and R. T Jacobsen, Int. J. Thermophys. 25 (2004) 21–69: limit of zero
 * density, equation 5 with the coefficients of air. At atmospheric pressure the conductivity is
 * about 0.2 % higher (from memory). Range that of {@link AirViscosity}, 100 to 1000 K.
 */
public final class AirConductivity {
  private static final double REFERENCE_KELVIN = 132.6312;
  private static final double MICROPASCAL_PER_PASCAL = 1e6;
  private static final double WATTS_PER_MILLIWATT = 1e-3;

  private AirConductivity() {}

  /**
   * Thermal conductivity.
   *
   * @param kelvin temperature, K, 100 to 1000
   * @return W/(m K)
   * @throws IllegalArgumentException outside this range
   */
  public static double wattsPerMetreKelvin(double kelvin) {
    double viscosity = AirViscosity.pascalSeconds(kelvin) * MICROPASCAL_PER_PASCAL;
    double tau = REFERENCE_KELVIN / kelvin;
    return WATTS_PER_MILLIWATT
        * (1.308 * viscosity + 1.405 * Math.pow(tau, -1.1) - 1.036 * Math.pow(tau, -0.3));
  }
}
