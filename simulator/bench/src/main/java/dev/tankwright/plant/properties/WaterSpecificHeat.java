package dev.tankwright.plant.properties;

/**
 * Isobaric specific heat of liquid water at atmospheric pressure.
 *
 * <p>Source: IAPWS SR6-08(2011), −T ∂²g/∂T² of the Gibbs energy of equation 1, coefficients a1 to
 * a3, b1 to b4 and c3 of table 1; range 253.15 to 383.15 K.
 */
public final class WaterSpecificHeat {
  private static final double A1 = -1.661470539e5;
  private static final double A2 = 2.708781640e6;
  private static final double A3 = -1.557191544e8;

  private static final double B1 = -8.237426256e-1;
  private static final double B2 = 1.908956353;
  private static final double B3 = -2.017597384;
  private static final double B4 = 8.546361348e-1;

  private static final double C3 = -8.983025854;

  private WaterSpecificHeat() {}

  /**
   * Specific heat at constant pressure.
   *
   * @param kelvin temperature, K, 253.15 to 383.15
   * @return J/(kg K)
   * @throws IllegalArgumentException outside the range of the release
   */
  public static double joulesPerKilogramKelvin(double kelvin) {
    LiquidWater.check(kelvin);
    double alpha = LiquidWater.alpha(kelvin);
    double beta = LiquidWater.beta(kelvin);
    // Second derivatives of α^n and β^m: n (n + 1) with n = 4, 5, 7 and m (m + 1) with m = 2 to 5.
    double warm = 20 * A1 + alpha * (30 * A2 + alpha * alpha * 56 * A3);
    double cold = 6 * B1 + beta * (12 * B2 + beta * (20 * B3 + beta * 30 * B4));
    double alpha3 = alpha * alpha * alpha;
    double beta2 = beta * beta;
    double sum = alpha3 * alpha3 * warm + beta2 * beta2 * cold;
    return -LiquidWater.GAS_CONSTANT * (C3 + LiquidWater.tau(kelvin) * sum);
  }
}
