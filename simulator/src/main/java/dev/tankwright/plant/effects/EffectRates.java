package dev.tankwright.plant.effects;

/**
 * The estimated coefficients of the effects, in one place so that their whole plausible range can
 * be tried. Each default is the middle of its range.
 *
 * @param halfPower power density at which activity is half of its ceiling, W/L; 4–16
 * @param gasHalf dissolved gas, as a fraction of saturation, that halves activity; 0.9–1.3
 * @param widthCelsius half width of the bell over temperature, K; 20–40
 * @param waterShare activity left in plain water, whose surface tension is high, 0–1; 0.2–0.5
 * @param shadowPerKilogramPerLitre how much a load takes from the activity, L/kg; 0.5–2
 * @param soilPerSecond rate of soil removal at full activity, 1/s; 1/300–1/100
 * @param foilIncubationSeconds time at full activity before a foil shows anything, s; 60–120
 * @param pitsPerSecond pits per piece and second at full activity after that; 0.05–0.2
 */
public record EffectRates(
    double halfPower,
    double gasHalf,
    double widthCelsius,
    double waterShare,
    double shadowPerKilogramPerLitre,
    double soilPerSecond,
    double foilIncubationSeconds,
    double pitsPerSecond) {

  /** The middle of every range. */
  public static EffectRates typical() {
    return new EffectRates(8, 1.1, 30, 0.35, 1, 1.0 / 200, 90, 0.1);
  }
}
