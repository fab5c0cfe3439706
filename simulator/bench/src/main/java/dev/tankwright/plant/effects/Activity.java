package dev.tankwright.plant.effects;

/**
 * Cavitation activity index, 0–1, an estimate: power density with a soft threshold and a ceiling,
 * damping by dissolved gas that sets in near saturation, a bell over temperature with its top at 45
 * °C (damage in water peaks at 40–50 °C: Plesset 1972, J. Basic Eng. 94:559, measured from 0 to 90
 * °C), a loss in plain water, and a shadow cast by the load.
 */
public final class Activity {
  private static final double PEAK_CELSIUS = 45;

  private final EffectRates rates;

  /** Makes an index with the given coefficients. */
  public Activity(EffectRates rates) {
    this.rates = rates;
  }

  /**
   * The index.
   *
   * @param wattsPerLitre electrical ultrasound power per volume, W/L
   * @param gasSaturation dissolved gas as a fraction of saturation
   * @param celsius temperature of the solution, °C
   * @param detergentShare 1 with the right detergent, 0 in plain water
   * @param loadKilogramsPerLitre mass of the load per volume, kg/L
   */
  public double index(
      double wattsPerLitre,
      double gasSaturation,
      double celsius,
      double detergentShare,
      double loadKilogramsPerLitre) {
    double drive = square(wattsPerLitre / rates.halfPower());
    double power = drive / (drive + 1);
    double ratio = square(gasSaturation / rates.gasHalf());
    // Tenth power: how sharply gas damps between a degassed and a saturated bath, an estimate.
    double gas = 1 / (1 + square(square(ratio)) * ratio);
    double distance = (celsius - PEAK_CELSIUS) / rates.widthCelsius();
    double tension = rates.waterShare() + (1 - rates.waterShare()) * detergentShare;
    double shadow = 1 / (1 + rates.shadowPerKilogramPerLitre() * loadKilogramsPerLitre);
    return power * gas * Math.exp(-distance * distance) * tension * shadow;
  }

  private static double square(double x) {
    return x * x;
  }
}
