package dev.tankwright.plant.properties;

/**
 * Dynamic viscosity of liquid water at atmospheric pressure.
 *
 * <p>Source: IAPWS SR6-08(2011), equation 7 with the coefficients of table 5; range 253.15 to
 * 383.15 K.
 */
public final class WaterViscosity {
  private static final double PASCAL_PER_MICROPASCAL = 1e-6;

  private WaterViscosity() {}

  /**
   * Dynamic viscosity.
   *
   * @param kelvin temperature, K, 253.15 to 383.15
   * @return Pa s
   * @throws IllegalArgumentException outside the range of the release
   */
  public static double pascalSeconds(double kelvin) {
    LiquidWater.check(kelvin);
    double t = LiquidWater.reduced(kelvin);
    return PASCAL_PER_MICROPASCAL
        * (280.68 * Math.pow(t, -1.9)
            + 511.45 * Math.pow(t, -7.7)
            + 61.131 * Math.pow(t, -19.6)
            + 0.45903 * Math.pow(t, -40));
  }
}
