package dev.tankwright.plant.properties;

/**
 * Water vapour in air and the density of the mixture.
 *
 * <p>Source: mixture of ideal gases (ASHRAE Handbook, Fundamentals, chapter Psychrometrics: ratio
 * of molar masses 0.621945, gas constant of dry air 287.042 J/(kg K)), saturation pressure of IF97.
 * The enhancement of the saturation pressure by air, up to 0.5 %, is left out. Range 273.15 to
 * 373.15 K, relative humidity 0 to 1, total pressure 50 to 300 kPa and above the vapour's.
 */
public final class HumidAir {
  private static final double LOWEST_KELVIN = 273.15;
  private static final double HIGHEST_KELVIN = 373.15;
  private static final double LOWEST_PASCAL = 50e3;
  private static final double HIGHEST_PASCAL = 300e3;
  private static final double MOLAR_MASS_RATIO = 0.621945;
  private static final double DRY_AIR_GAS_CONSTANT = 287.042;
  private static final String SOURCE = "humid air as ideal gases";

  private HumidAir() {}

  /**
   * Partial pressure of the vapour.
   *
   * @param kelvin temperature, K, 273.15 to 373.15
   * @param relativeHumidity 0 to 1
   * @return Pa
   * @throws IllegalArgumentException outside these ranges
   */
  public static double vapourPascal(double kelvin, double relativeHumidity) {
    Range.check(kelvin, LOWEST_KELVIN, HIGHEST_KELVIN, "K", SOURCE);
    Range.check(relativeHumidity, 0, 1, "relative humidity", SOURCE);
    return relativeHumidity * SaturationPressure.pascal(kelvin);
  }

  /**
   * Humidity ratio: mass of vapour by mass of dry air.
   *
   * @param kelvin temperature, K, 273.15 to 373.15
   * @param relativeHumidity 0 to 1
   * @param pascal total pressure, Pa, 50e3 to 300e3 and above the vapour's partial pressure
   * @return kg/kg
   * @throws IllegalArgumentException outside these ranges
   */
  public static double humidityRatio(double kelvin, double relativeHumidity, double pascal) {
    double vapour = vapourPascal(kelvin, relativeHumidity);
    return MOLAR_MASS_RATIO * vapour / dryPascal(vapour, pascal);
  }

  /**
   * Mass of dry air by volume of humid air.
   *
   * @param kelvin temperature, K, 273.15 to 373.15
   * @param relativeHumidity 0 to 1
   * @param pascal total pressure, Pa, 50e3 to 300e3 and above the vapour's partial pressure
   * @return kg/m³
   * @throws IllegalArgumentException outside these ranges
   */
  public static double dryKilogramsPerCubicMetre(
      double kelvin, double relativeHumidity, double pascal) {
    double vapour = vapourPascal(kelvin, relativeHumidity);
    return dryPascal(vapour, pascal) / (DRY_AIR_GAS_CONSTANT * kelvin);
  }

  /**
   * Density of humid air, dry air and vapour together.
   *
   * @param kelvin temperature, K, 273.15 to 373.15
   * @param relativeHumidity 0 to 1
   * @param pascal total pressure, Pa, 50e3 to 300e3 and above the vapour's partial pressure
   * @return kg/m³
   * @throws IllegalArgumentException outside these ranges
   */
  public static double kilogramsPerCubicMetre(
      double kelvin, double relativeHumidity, double pascal) {
    double vapour = vapourPascal(kelvin, relativeHumidity);
    return (dryPascal(vapour, pascal) + MOLAR_MASS_RATIO * vapour)
        / (DRY_AIR_GAS_CONSTANT * kelvin);
  }

  private static double dryPascal(double vapour, double pascal) {
    Range.check(pascal, LOWEST_PASCAL, HIGHEST_PASCAL, "Pa total pressure", SOURCE);
    if (vapour >= pascal) {
      throw new IllegalArgumentException(
          "vapour of "
              + vapour
              + " Pa leaves no room for air at a total pressure of "
              + pascal
              + " Pa: "
              + SOURCE
              + " needs a vapour pressure below the total");
    }
    return pascal - vapour;
  }
}
