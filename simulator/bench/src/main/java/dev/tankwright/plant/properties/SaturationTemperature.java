package dev.tankwright.plant.properties;

/**
 * Saturation temperature of water: boiling point at a pressure, or dew point of a vapour pressure.
 *
 * <p>Source: IAPWS R7-97(2012), the Industrial Formulation 1997 (IF97), region 4, equation 31 with
 * the coefficients of its table 34; range 611.213 Pa to 22.064 MPa.
 */
public final class SaturationTemperature {
  private static final double LOWEST_PASCAL = 611.213;
  private static final double HIGHEST_PASCAL = 22.064e6;

  private SaturationTemperature() {}

  /**
   * Saturation temperature.
   *
   * @param pascal pressure, Pa, 611.213 to 22.064e6
   * @return K
   * @throws IllegalArgumentException outside the range of the formulation
   */
  public static double kelvin(double pascal) {
    Range.check(pascal, LOWEST_PASCAL, HIGHEST_PASCAL, "Pa", "IF97 equation 31");
    double square = Math.sqrt(pascal / 1e6);
    double beta = Math.sqrt(square);
    double e = square + SaturationPressure.N3 * beta + SaturationPressure.N6;
    double f =
        SaturationPressure.N1 * square + SaturationPressure.N4 * beta + SaturationPressure.N7;
    double g =
        SaturationPressure.N2 * square + SaturationPressure.N5 * beta + SaturationPressure.N8;
    double d = 2 * g / (-f - Math.sqrt(f * f - 4 * e * g));
    double sum = SaturationPressure.N10 + d;
    double product = SaturationPressure.N9 + SaturationPressure.N10 * d;
    return (sum - Math.sqrt(sum * sum - 4 * product)) / 2;
  }
}
