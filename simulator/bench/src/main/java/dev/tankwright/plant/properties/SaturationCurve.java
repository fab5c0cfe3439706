package dev.tankwright.plant.properties;

/**
 * Water and its vapour in equilibrium: pressure with its slope, and both densities and enthalpies.
 *
 * <p>Source: IAPWS SR1-86(1992), Revised Supplementary Release on Saturation Properties of Ordinary
 * Water Substance (Wagner and Pruss 1993, J. Phys. Chem. Ref. Data 22:783), equations 1 to 4 and
 * the enthalpies by the equation of Clapeyron, 6 and 7; range 273.16 to 647.096 K. Taken down to
 * 273.15 K, 0.01 K below the triple point, so that 0 °C is part of it.
 */
public final class SaturationCurve {
  static final double CRITICAL_KELVIN = 647.096;

  private static final double LOWEST_KELVIN = 273.15;
  private static final double CRITICAL_PASCAL = 22.064e6;
  private static final double CRITICAL_DENSITY = 322;
  private static final double ALPHA_ZERO = 1000;

  private SaturationCurve() {}

  /**
   * Vapour pressure, equation 1.
   *
   * @param kelvin temperature, K, 273.15 to 647.096
   * @return Pa
   * @throws IllegalArgumentException outside the range of the release
   */
  public static double pascal(double kelvin) {
    return CRITICAL_PASCAL * Math.exp(CRITICAL_KELVIN / kelvin * exponent(tau(kelvin)));
  }

  /**
   * Slope of the vapour pressure, derivative of equation 1.
   *
   * @param kelvin temperature, K, 273.15 to 647.096
   * @return Pa/K
   * @throws IllegalArgumentException outside the range of the release
   */
  public static double pascalPerKelvin(double kelvin) {
    double tau = tau(kelvin);
    double root = Math.sqrt(tau);
    double derivative =
        -7.85951783
            + 1.5 * 1.84408259 * root
            - 3 * 11.7866497 * tau * tau
            + 3.5 * 22.6807411 * tau * tau * root
            - 4 * 15.9618719 * tau * tau * tau
            + 7.5 * 1.80122502 * Math.pow(tau, 6.5);
    return -pascal(kelvin) / kelvin * (CRITICAL_KELVIN / kelvin * exponent(tau) + derivative);
  }

  /**
   * Density of the saturated liquid, equation 2.
   *
   * @param kelvin temperature, K, 273.15 to 647.096
   * @return kg/m³
   * @throws IllegalArgumentException outside the range of the release
   */
  public static double liquidKilogramsPerCubicMetre(double kelvin) {
    double third = Math.cbrt(tau(kelvin));
    return CRITICAL_DENSITY
        * (1
            + 1.99274064 * third
            + 1.09965342 * third * third
            - 0.510839303 * Math.pow(third, 5)
            - 1.75493479 * Math.pow(third, 16)
            - 45.5170352 * Math.pow(third, 43)
            - 6.74694450e5 * Math.pow(third, 110));
  }

  /**
   * Density of the saturated vapour, equation 3.
   *
   * @param kelvin temperature, K, 273.15 to 647.096
   * @return kg/m³
   * @throws IllegalArgumentException outside the range of the release
   */
  public static double vapourKilogramsPerCubicMetre(double kelvin) {
    double sixth = Math.sqrt(Math.cbrt(tau(kelvin)));
    return CRITICAL_DENSITY
        * Math.exp(
            -2.03150240 * sixth * sixth
                - 2.68302940 * Math.pow(sixth, 4)
                - 5.38626492 * Math.pow(sixth, 8)
                - 17.2991605 * Math.pow(sixth, 18)
                - 44.7586581 * Math.pow(sixth, 37)
                - 63.9201063 * Math.pow(sixth, 71));
  }

  /**
   * Specific enthalpy of the saturated liquid, equation 6, zero of the internal energy at the
   * triple point.
   *
   * @param kelvin temperature, K, 273.15 to 647.096
   * @return J/kg
   * @throws IllegalArgumentException outside the range of the release
   */
  public static double liquidJoulesPerKilogram(double kelvin) {
    double density = liquidKilogramsPerCubicMetre(kelvin);
    return alpha(kelvin) + kelvin / density * pascalPerKelvin(kelvin);
  }

  /**
   * Specific enthalpy of the saturated vapour, equation 7, on the same zero.
   *
   * @param kelvin temperature, K, 273.15 to 647.096
   * @return J/kg
   * @throws IllegalArgumentException outside the range of the release
   */
  public static double vapourJoulesPerKilogram(double kelvin) {
    double density = vapourKilogramsPerCubicMetre(kelvin);
    return alpha(kelvin) + kelvin / density * pascalPerKelvin(kelvin);
  }

  private static double tau(double kelvin) {
    Range.check(kelvin, LOWEST_KELVIN, CRITICAL_KELVIN, "K", "IAPWS SR1-86(1992)");
    return 1 - kelvin / CRITICAL_KELVIN;
  }

  /** Sum of equation 1: exponents 1, 1.5, 3, 3.5, 4, 7.5. */
  private static double exponent(double tau) {
    double root = Math.sqrt(tau);
    double cube = tau * tau * tau;
    return -7.85951783 * tau
        + 1.84408259 * tau * root
        - 11.7866497 * cube
        + 22.6807411 * cube * root
        - 15.9618719 * cube * tau
        + 1.80122502 * cube * cube * tau * root;
  }

  /** Auxiliary quantity of equation 4, J/kg. */
  private static double alpha(double kelvin) {
    double theta = kelvin / CRITICAL_KELVIN;
    return ALPHA_ZERO
        * (-1135.905627715
            - 5.65134998e-8 * Math.pow(theta, -19)
            + 2690.66631 * theta
            + 127.287297 * Math.pow(theta, 4.5)
            - 135.003439 * Math.pow(theta, 5)
            + 0.981825814 * Math.pow(theta, 54.5));
  }
}
