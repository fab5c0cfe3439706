package dev.tankwright.plant;

/**
 * Cavitation activity index, 0–1, an estimate throughout: power density with a soft ceiling,
 * damping by dissolved gas, and a bell over temperature with its top at 45 °C (damage in water
 * peaks at 40–50 °C: Plesset 1972, J. Basic Eng. 94:559). It compares states of one bath and does
 * not predict cleanliness.
 */
final class Activity {
  private static final double HALF_WATTS_PER_LITRE = 8;
  private static final double GAS_HALF = 1.1;
  private static final double PEAK_CELSIUS = 45;
  private static final double WIDTH_CELSIUS = 30;

  private Activity() {}

  static double index(double wattsPerLitre, double gasSaturation, double celsius) {
    double power = wattsPerLitre / (wattsPerLitre + HALF_WATTS_PER_LITRE);
    double ratio = gasSaturation / GAS_HALF;
    double gas = 1 / (1 + ratio * ratio * ratio * ratio);
    double distance = (celsius - PEAK_CELSIUS) / WIDTH_CELSIUS;
    return power * gas * Math.exp(-distance * distance);
  }
}
