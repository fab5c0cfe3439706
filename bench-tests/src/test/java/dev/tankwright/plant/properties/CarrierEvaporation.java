package dev.tankwright.plant.properties;

/**
 * Evaporation from a water surface into still air by vapour pressures alone.
 *
 * <p>Source: form of Carrier as given by the ASHRAE Handbook, HVAC Applications: w/A = 0.089 (p_w −
 * p_a) / Y in kg/(s m²), at no air velocity, with vapour pressures in kPa at the water's and in the
 * room's air and latent heat Y in kJ/kg at the water's temperature. Range that of the data against
 * which Shah 2002 tried it: water 7 to 94 °C, air 6 to 35 °C, relative humidity 0.28 to 0.95. Where
 * the surface is no moister than the room the result is 0: condensation is not part of it.
 */
public final class CarrierEvaporation {
  private static final double STILL_AIR = 0.089;
  private static final double SECONDS_PER_HOUR = 3600;

  private CarrierEvaporation() {}

  /**
   * Rate of evaporation.
   *
   * @param waterKelvin temperature of the water surface, K, 280.15 to 367.15
   * @param airKelvin temperature of the room, K, 279.15 to 308.15
   * @param relativeHumidity of the room, 0.28 to 0.95
   * @return kg/(m² h), at least 0
   * @throws IllegalArgumentException outside these ranges
   */
  public static double kilogramsPerSquareMetreHour(
      double waterKelvin, double airKelvin, double relativeHumidity) {
    StillAir.check(waterKelvin, airKelvin, relativeHumidity);
    double excess =
        SaturationPressure.pascal(waterKelvin) - HumidAir.vapourPascal(airKelvin, relativeHumidity);
    // The factors 1000 of kPa and of kJ cancel.
    return STILL_AIR
        * Math.max(0, excess)
        / LatentHeat.joulesPerKilogram(waterKelvin)
        * SECONDS_PER_HOUR;
  }
}
