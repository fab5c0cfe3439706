package dev.tankwright.plant.properties;

/**
 * Thermal conductivity of liquid water at atmospheric pressure.
 *
 * <p>Source: IAPWS SR6-08(2011), equation 8 with the coefficients of its table; range 273.15 to
 * 383.15 K, narrower at the cold end than that of the release's other properties.
 */
public final class WaterConductivity {
  private static final double LOWEST_KELVIN = 273.15;

  private WaterConductivity() {}

  /**
   * Thermal conductivity.
   *
   * @param kelvin temperature, K, 273.15 to 383.15
   * @return W/(m K)
   * @throws IllegalArgumentException outside the range of the release for this property
   */
  public static double wattsPerMetreKelvin(double kelvin) {
    Range.check(
        kelvin, LOWEST_KELVIN, LiquidWater.HIGHEST_KELVIN, "K", LiquidWater.SOURCE + " eq. 8");
    double t = LiquidWater.reduced(kelvin);
    return 1.6630 * Math.pow(t, -1.15)
        - 1.7781 * Math.pow(t, -3.4)
        + 1.1567 * Math.pow(t, -6.0)
        - 0.432115 * Math.pow(t, -7.6);
  }
}
