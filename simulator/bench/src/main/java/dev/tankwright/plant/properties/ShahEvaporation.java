package dev.tankwright.plant.properties;

/**
 * Evaporation from an undisturbed water surface into still air, driven by natural convection.
 *
 * <p>Source: M. M. Shah, Evaluation of available correlations for rate of evaporation from
 * undisturbed water pools to quiet air, HVAC&amp;R Research 8 (2002) 125–131: E = 35 ρw (ρr −
 * ρw)^(1/3) (Ww − Wr) in kg/(m² h), with mass of dry air by volume ρ and humidity ratio W of air
 * saturated at the water (w) and of the room (r). Mean deviation 18 % over 11 data sets. Range
 * water 7 to 94 °C, air 6 to 35 °C, relative humidity 0.28 to 0.95, total pressure 85 to 110 kPa
 * (an estimate).
 *
 * <p>Where the air at the water is no lighter than the room's, or no moister, natural convection
 * carries nothing away and the result is 0; the author's later additions for stirred rooms are not
 * part of it, nor is condensation.
 */
public final class ShahEvaporation {
  private static final double FACTOR = 35;
  private static final double LOWEST_PASCAL = 85e3;
  private static final double HIGHEST_PASCAL = 110e3;

  private ShahEvaporation() {}

  /**
   * Rate of evaporation.
   *
   * @param waterKelvin temperature of the water surface, K, 280.15 to 367.15
   * @param airKelvin temperature of the room, K, 279.15 to 308.15
   * @param relativeHumidity of the room, 0.28 to 0.95
   * @param pascal total pressure, Pa, 85e3 to 110e3
   * @return kg/(m² h), at least 0
   * @throws IllegalArgumentException outside these ranges
   */
  public static double kilogramsPerSquareMetreHour(
      double waterKelvin, double airKelvin, double relativeHumidity, double pascal) {
    StillAir.check(waterKelvin, airKelvin, relativeHumidity);
    Range.check(pascal, LOWEST_PASCAL, HIGHEST_PASCAL, "Pa", "Shah 2002");
    double surface = HumidAir.dryKilogramsPerCubicMetre(waterKelvin, 1, pascal);
    double room = HumidAir.dryKilogramsPerCubicMetre(airKelvin, relativeHumidity, pascal);
    double moisture =
        HumidAir.humidityRatio(waterKelvin, 1, pascal)
            - HumidAir.humidityRatio(airKelvin, relativeHumidity, pascal);
    return FACTOR * surface * Math.cbrt(Math.max(0, room - surface)) * Math.max(0, moisture);
  }
}
