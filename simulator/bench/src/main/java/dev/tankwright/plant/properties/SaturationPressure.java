package dev.tankwright.plant.properties;

/**
 * Saturation pressure of water.
 *
 * <p>Source: IAPWS R7-97(2012), the Industrial Formulation 1997 (IF97), region 4, equation 30 with
 * the coefficients of its table 34; range 273.15 to 647.096 K.
 */
public final class SaturationPressure {
  // Table 34; equation 31, the inverse, has the same coefficients.
  static final double N1 = 0.11670521452767e4;
  static final double N2 = -0.72421316703206e6;
  static final double N3 = -0.17073846940092e2;
  static final double N4 = 0.12020824702470e5;
  static final double N5 = -0.32325550322333e7;
  static final double N6 = 0.14915108613530e2;
  static final double N7 = -0.48232657361591e4;
  static final double N8 = 0.40511340542057e6;
  static final double N9 = -0.23855557567849;
  static final double N10 = 0.65017534844798e3;

  private static final double LOWEST_KELVIN = 273.15;
  private static final double HIGHEST_KELVIN = 647.096;

  private SaturationPressure() {}

  /**
   * Saturation pressure.
   *
   * @param kelvin temperature, K, 273.15 to 647.096
   * @return Pa
   * @throws IllegalArgumentException outside the range of the formulation
   */
  public static double pascal(double kelvin) {
    Range.check(kelvin, LOWEST_KELVIN, HIGHEST_KELVIN, "K", "IF97 equation 30");
    double theta = kelvin + N9 / (kelvin - N10);
    double a = theta * theta + N1 * theta + N2;
    double b = N3 * theta * theta + N4 * theta + N5;
    double c = N6 * theta * theta + N7 * theta + N8;
    double root = 2 * c / (-b + Math.sqrt(b * b - 4 * a * c));
    return 1e6 * root * root * root * root;
  }
}
