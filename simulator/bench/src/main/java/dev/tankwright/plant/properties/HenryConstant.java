package dev.tankwright.plant.properties;

/**
 * Henry's constants of oxygen and nitrogen in water: fugacity of the gas over its mole fraction in
 * the liquid, at infinite dilution and the vapour pressure of the water.
 *
 * <p>Source: IAPWS G7-04, Guideline on the Henry's Constant and Vapor-Liquid Distribution Constant
 * for Gases in H2O and D2O at High Temperatures, equation 3, coefficients and ranges of fitted data
 * of its table 2 (table and equation numbers from memory), vapour pressure of {@link
 * SaturationCurve}; range 274.15 to 616.52 K for oxygen, 278.12 to 636.46 K for nitrogen. The
 * guideline's deviation from data is about 4 %.
 */
public final class HenryConstant {
  /** Lowest temperature for oxygen, K. */
  public static final double OXYGEN_LOWEST_KELVIN = 274.15;

  /** Lowest temperature for nitrogen, K. */
  public static final double NITROGEN_LOWEST_KELVIN = 278.12;

  private static final double OXYGEN_HIGHEST_KELVIN = 616.52;
  private static final double NITROGEN_HIGHEST_KELVIN = 636.46;

  private HenryConstant() {}

  /**
   * Henry's constant of oxygen.
   *
   * @param kelvin temperature, K, 274.15 to 616.52
   * @return Pa
   * @throws IllegalArgumentException outside the range of the guideline for oxygen
   */
  public static double oxygenPascal(double kelvin) {
    Range.check(kelvin, OXYGEN_LOWEST_KELVIN, OXYGEN_HIGHEST_KELVIN, "K", "IAPWS G7-04, oxygen");
    return pascal(kelvin, -9.44833, 4.43822, 11.42005);
  }

  /**
   * Henry's constant of nitrogen.
   *
   * @param kelvin temperature, K, 278.12 to 636.46
   * @return Pa
   * @throws IllegalArgumentException outside the range of the guideline for nitrogen
   */
  public static double nitrogenPascal(double kelvin) {
    Range.check(
        kelvin, NITROGEN_LOWEST_KELVIN, NITROGEN_HIGHEST_KELVIN, "K", "IAPWS G7-04, nitrogen");
    return pascal(kelvin, -9.67578, 4.72162, 11.70585);
  }

  private static double pascal(double kelvin, double a, double b, double c) {
    double reduced = kelvin / SaturationCurve.CRITICAL_KELVIN;
    double tau = 1 - reduced;
    double logarithm =
        (a + b * Math.pow(tau, 0.355)) / reduced + c * Math.pow(reduced, -0.41) * Math.exp(tau);
    return SaturationCurve.pascal(kelvin) * Math.exp(logarithm);
  }
}
