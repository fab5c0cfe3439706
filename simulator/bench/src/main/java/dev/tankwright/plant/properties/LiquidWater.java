package dev.tankwright.plant.properties;

/**
 * What the properties of liquid water at 0.1 MPa have in common: reference state, range and reduced
 * temperatures.
 *
 * <p>Source: IAPWS SR6-08(2011), Revised Supplementary Release on Properties of Liquid Water at 0.1
 * MPa, equations 1 to 8; range 253.15 to 383.15 K, for the thermal conductivity 273.15 to 383.15 K.
 * The water may be supercooled or superheated; the release allows its use up to 0.3 MPa, and at
 * 101.325 kPa its density differs from that at 0.1 MPa by less than 1e-6 of it.
 */
final class LiquidWater {
  /** Lowest temperature of the release, K: −20 °C, with the rounding of its conversion. */
  static final double LOWEST_KELVIN = 273.15 - 20;

  /** Highest temperature of the release, K. */
  static final double HIGHEST_KELVIN = 383.15;

  static final String SOURCE = "IAPWS SR6-08(2011)";

  /** Specific gas constant of the release, J/(kg K). */
  static final double GAS_CONSTANT = 461.51805;

  /** Reference temperature, K. */
  static final double REFERENCE_KELVIN = 10;

  /** Reference pressure, Pa. */
  static final double REFERENCE_PASCAL = 1e5;

  private static final double ALPHA_KELVIN = 593;
  private static final double BETA_KELVIN = 232;
  private static final double TRANSPORT_KELVIN = 300;

  private LiquidWater() {}

  static void check(double kelvin) {
    Range.check(kelvin, LOWEST_KELVIN, HIGHEST_KELVIN, "K", SOURCE);
  }

  /** τ of equation 1. */
  static double tau(double kelvin) {
    return kelvin / REFERENCE_KELVIN;
  }

  /** α of equation 1. */
  static double alpha(double kelvin) {
    return REFERENCE_KELVIN / (ALPHA_KELVIN - kelvin);
  }

  /** β of equation 1. */
  static double beta(double kelvin) {
    return REFERENCE_KELVIN / (kelvin - BETA_KELVIN);
  }

  /** Reduced temperature of the transport properties, equations 7 and 8. */
  static double reduced(double kelvin) {
    return kelvin / TRANSPORT_KELVIN;
  }
}
