package dev.tankwright.plant.properties;

/**
 * Outflow from an open tank through an opening at its bottom.
 *
 * <p>Source: law of Torricelli with a coefficient of discharge, Q = Cd a √(2 g h), and its integral
 * over a tank of constant section, t = 2 A (√h₁ − √h₀) / (Cd a √(2 g)). Coefficients from memory:
 * sharp edge 0.61, short tube 0.80 to 0.82. Range: level at least 0, sections above 0, coefficient
 * above 0 up to 1; an opening small beside the tank, at a level of several times its bore.
 */
public final class Torricelli {
  /** Coefficient of discharge of a sharp-edged opening, from memory. */
  public static final double SHARP_EDGE = 0.61;

  private static final String SOURCE = "Torricelli's law";

  private Torricelli() {}

  /**
   * Speed of the jet, before contraction and friction.
   *
   * @param metres level above the opening, m, at least 0
   * @return m/s
   * @throws IllegalArgumentException below this range
   */
  public static double metresPerSecond(double metres) {
    Range.checkNotNegative(metres, "m of level", SOURCE);
    return Math.sqrt(2 * Gravity.METRES_PER_SECOND_SQUARED * metres);
  }

  /**
   * Outflow.
   *
   * @param discharge coefficient of discharge, above 0 up to 1
   * @param openingSquareMetres section of the opening, m², at least 0
   * @param metres level above the opening, m, at least 0
   * @return m³/s
   * @throws IllegalArgumentException outside these ranges
   */
  public static double cubicMetresPerSecond(
      double discharge, double openingSquareMetres, double metres) {
    checkDischarge(discharge);
    Range.checkNotNegative(openingSquareMetres, "m² of opening", SOURCE);
    return discharge * openingSquareMetres * metresPerSecond(metres);
  }

  /**
   * Time in which the level falls.
   *
   * @param discharge coefficient of discharge, above 0 up to 1
   * @param openingSquareMetres section of the opening, m², above 0
   * @param tankSquareMetres horizontal section of the tank, m², above 0
   * @param fromMetres level at the start, m, at least 0
   * @param toMetres level at the end, m, 0 to the level at the start
   * @return s
   * @throws IllegalArgumentException outside these ranges
   */
  public static double drainSeconds(
      double discharge,
      double openingSquareMetres,
      double tankSquareMetres,
      double fromMetres,
      double toMetres) {
    checkDischarge(discharge);
    Range.checkPositive(openingSquareMetres, "m² of opening", SOURCE);
    Range.checkPositive(tankSquareMetres, "m² of tank", SOURCE);
    Range.checkNotNegative(fromMetres, "m of level at the start", SOURCE);
    Range.check(toMetres, 0, fromMetres, "m of level at the end", SOURCE);
    return 2
        * tankSquareMetres
        * (Math.sqrt(fromMetres) - Math.sqrt(toMetres))
        / (discharge * openingSquareMetres * Math.sqrt(2 * Gravity.METRES_PER_SECOND_SQUARED));
  }

  private static void checkDischarge(double discharge) {
    Range.checkPositive(discharge, "(discharge coefficient)", SOURCE);
    Range.check(discharge, 0, 1, "(discharge coefficient)", SOURCE);
  }
}
