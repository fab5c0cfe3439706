package dev.tankwright.plant.properties;

/**
 * The conditions over which evaporation into still air was measured.
 *
 * <p>Source: the data sets against which M. M. Shah 2002 (HVAC&amp;R Research 8:125) held the
 * published correlations: water 7 to 94 °C, air 6 to 35 °C, relative humidity 0.28 to 0.95.
 */
final class StillAir {
  private static final double LOWEST_WATER_KELVIN = 273.15 + 7;
  private static final double HIGHEST_WATER_KELVIN = 273.15 + 94;
  private static final double LOWEST_AIR_KELVIN = 273.15 + 6;
  private static final double HIGHEST_AIR_KELVIN = 273.15 + 35;
  private static final double LOWEST_HUMIDITY = 0.28;
  private static final double HIGHEST_HUMIDITY = 0.95;
  private static final String SOURCE = "evaporation into still air (data of Shah 2002)";

  private StillAir() {}

  static void check(double waterKelvin, double airKelvin, double relativeHumidity) {
    Range.check(waterKelvin, LOWEST_WATER_KELVIN, HIGHEST_WATER_KELVIN, "K of water", SOURCE);
    Range.check(airKelvin, LOWEST_AIR_KELVIN, HIGHEST_AIR_KELVIN, "K of air", SOURCE);
    Range.check(relativeHumidity, LOWEST_HUMIDITY, HIGHEST_HUMIDITY, "relative humidity", SOURCE);
  }
}
