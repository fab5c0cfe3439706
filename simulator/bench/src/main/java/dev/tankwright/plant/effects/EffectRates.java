package dev.tankwright.plant.effects;

/**
 * The estimated coefficients of the effects, in one place so that their whole plausible range can
 * be tried. No published values for a bath were found. The ranges are bounded from outside by what
 * the trade sees in a foil check (common practice, no source): five minutes in a sound, degassed
 * bath mark a foil, and five minutes in a weak, undegassed or plain-water bath do not. Wider ranges
 * are not excluded by physics, but in them a foil check would not tell these baths apart.
 *
 * @param halfPower electrical power density at which activity is half of its ceiling, W/L; 8–14
 * @param gasHalf dissolved gas, as a fraction of saturation, that halves activity; 0.83–0.87
 * @param widthCelsius half width of the bell over temperature, K; 25–40
 * @param waterShare activity left in plain water, whose surface tension is high, 0–1; 0.2–0.45
 * @param shadowPerKilogramPerLitre how much a load takes from the activity, L/kg; 0.5–2
 * @param soilPerSecond rate of soil removal at full activity, 1/s; 1/300–1/100
 * @param foilIncubationSeconds time at full activity before a foil shows anything, s; 158–168
 * @param pitsPerSecond pits per piece and second at full activity after that; 0.2–0.4
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

  /** About the middle of every range. */
  public static EffectRates typical() {
    return new EffectRates(11, 0.85, 32, 0.33, 1, 1.0 / 200, 163, 0.3);
  }

  /** The lower end of every plausible range. */
  public static EffectRates lowest() {
    return new EffectRates(8, 0.83, 25, 0.2, 0.5, 1.0 / 300, 158, 0.2);
  }

  /** The upper end of every plausible range. */
  public static EffectRates highest() {
    return new EffectRates(14, 0.87, 40, 0.45, 2, 1.0 / 100, 168, 0.4);
  }
}
