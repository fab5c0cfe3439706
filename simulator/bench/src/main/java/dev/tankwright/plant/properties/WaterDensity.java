package dev.tankwright.plant.properties;

/**
 * Density and thermal expansion of liquid water at atmospheric pressure.
 *
 * <p>Source: IAPWS SR6-08(2011), specific volume by equation 2 and its derivative by temperature,
 * coefficients a5 to a10 and b5 to b10 of table 1; range 253.15 to 383.15 K.
 */
public final class WaterDensity {
  private static final double A5 = 1.93763157e-2;
  private static final double A6 = 6.74458446e3;
  private static final double A7 = -2.22521604e5;
  private static final double A8 = 1.00231247e8;
  private static final double A9 = -1.63552118e9;
  private static final double A10 = 8.32299658e9;

  private static final double B5 = 5.78545292e-3;
  private static final double B6 = -1.53195665e-2;
  private static final double B7 = 3.11337859e-2;
  private static final double B8 = -4.23546241e-2;
  private static final double B9 = 3.38713507e-2;
  private static final double B10 = -1.19946761e-2;

  private WaterDensity() {}

  /**
   * Density.
   *
   * @param kelvin temperature, K, 253.15 to 383.15
   * @return kg/m³
   * @throws IllegalArgumentException outside the range of the release
   */
  public static double kilogramsPerCubicMetre(double kelvin) {
    LiquidWater.check(kelvin);
    return 1 / volume(kelvin);
  }

  /**
   * Isobaric volume expansion coefficient (∂v/∂T)/v, negative below 4 °C.
   *
   * @param kelvin temperature, K, 253.15 to 383.15
   * @return 1/K
   * @throws IllegalArgumentException outside the range of the release
   */
  public static double expansionPerKelvin(double kelvin) {
    LiquidWater.check(kelvin);
    return volumePerKelvin(kelvin) / volume(kelvin);
  }

  /** Specific volume, m³/kg, with the exponents 4, 5, 7, 8, 9 of α and 1 to 6 of β. */
  private static double volume(double kelvin) {
    double alpha = LiquidWater.alpha(kelvin);
    double beta = LiquidWater.beta(kelvin);
    double warm = A6 + alpha * (A7 + alpha * alpha * (A8 + alpha * (A9 + alpha * A10)));
    double cold = B5 + beta * (B6 + beta * (B7 + beta * (B8 + beta * (B9 + beta * B10))));
    return LiquidWater.GAS_CONSTANT
        * LiquidWater.REFERENCE_KELVIN
        / LiquidWater.REFERENCE_PASCAL
        * (A5 + fourthPower(alpha) * warm + beta * cold);
  }

  /** Derivative of the specific volume by temperature, m³/(kg K). */
  private static double volumePerKelvin(double kelvin) {
    double alpha = LiquidWater.alpha(kelvin);
    double beta = LiquidWater.beta(kelvin);
    double warm =
        4 * A6 + alpha * (5 * A7 + alpha * alpha * (7 * A8 + alpha * (8 * A9 + alpha * 9 * A10)));
    double cold =
        B5 + beta * (2 * B6 + beta * (3 * B7 + beta * (4 * B8 + beta * (5 * B9 + beta * 6 * B10))));
    return LiquidWater.GAS_CONSTANT
        / LiquidWater.REFERENCE_PASCAL
        * (alpha * fourthPower(alpha) * warm - beta * beta * cold);
  }

  private static double fourthPower(double x) {
    return x * x * x * x;
  }
}
