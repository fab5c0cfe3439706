package dev.tankwright.plant.properties;

/**
 * Surface tension of pure water against its vapour; against air it differs by far less than the
 * effect of any detergent, which is not part of this correlation.
 *
 * <p>Source: IAPWS R1-76(2014), σ = B τ^μ (1 + b τ) with B 235.8 mN/m, b −0.625, μ 1.256 and τ = 1
 * − T/647.096 K; from the triple point to the critical point, and by the release's own statement
 * reasonable for supercooled water down to −25 °C: range 248.15 to 647.096 K.
 */
public final class SurfaceTension {
  // −25 °C, with the rounding of its conversion.
  private static final double LOWEST_KELVIN = 273.15 - 25;
  private static final double CRITICAL_KELVIN = 647.096;
  private static final double SCALE = 235.8e-3;
  private static final double LINEAR = -0.625;
  private static final double EXPONENT = 1.256;

  private SurfaceTension() {}

  /**
   * Surface tension.
   *
   * @param kelvin temperature, K, 248.15 to 647.096
   * @return N/m
   * @throws IllegalArgumentException outside the range of the release
   */
  public static double newtonsPerMetre(double kelvin) {
    Range.check(kelvin, LOWEST_KELVIN, CRITICAL_KELVIN, "K", "IAPWS R1-76(2014)");
    double tau = 1 - kelvin / CRITICAL_KELVIN;
    return SCALE * Math.pow(tau, EXPONENT) * (1 + LINEAR * tau);
  }
}
