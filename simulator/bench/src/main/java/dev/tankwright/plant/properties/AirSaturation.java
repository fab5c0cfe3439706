package dev.tankwright.plant.properties;

/**
 * Oxygen and nitrogen dissolved in water in equilibrium with water-saturated air.
 *
 * <p>Source: Henry's law with the constants of IAPWS G7-04 ({@link HenryConstant}) and the dry
 * air's partial pressure, the total less the saturation pressure of IF97; mole fractions of dry air
 * O₂ 0.209476 and N₂ 0.78084 (U.S. Standard Atmosphere 1976, table 3); density of water of IAPWS
 * SR6-08(2011). Range: from 274.15 K (oxygen) and 278.12 K (nitrogen) up to the boiling point at
 * the total pressure and at most 383.15 K; total pressure 50 to 300 kPa, within which the effect of
 * pressure on the constants is small beside their deviation. Oxygen agrees with {@link
 * OxygenSolubility} within 1.2 % from 1 to 40 °C.
 */
public final class AirSaturation {
  private static final double LOWEST_PASCAL = 50e3;
  private static final double HIGHEST_PASCAL = 300e3;
  private static final double OXYGEN_FRACTION = 0.209476;
  private static final double NITROGEN_FRACTION = 0.78084;
  private static final double OXYGEN_GRAMS_PER_MOLE = 31.9988;
  private static final double NITROGEN_GRAMS_PER_MOLE = 28.0134;
  private static final double WATER_GRAMS_PER_MOLE = 18.015268;
  private static final double MILLIGRAMS_PER_LITRE = 1000;

  private AirSaturation() {}

  /**
   * Dissolved oxygen at saturation.
   *
   * @param kelvin temperature, K, 274.15 up to the boiling point
   * @param pascal total pressure of the air with its vapour, Pa, 50e3 to 300e3
   * @return mg/L
   * @throws IllegalArgumentException outside these ranges
   */
  public static double oxygenMilligramsPerLitre(double kelvin, double pascal) {
    double moleFraction =
        OXYGEN_FRACTION * dryAirPascal(kelvin, pascal) / HenryConstant.oxygenPascal(kelvin);
    return concentration(moleFraction, OXYGEN_GRAMS_PER_MOLE, kelvin);
  }

  /**
   * Dissolved nitrogen at saturation, argon not included.
   *
   * @param kelvin temperature, K, 278.12 up to the boiling point
   * @param pascal total pressure of the air with its vapour, Pa, 50e3 to 300e3
   * @return mg/L
   * @throws IllegalArgumentException outside these ranges
   */
  public static double nitrogenMilligramsPerLitre(double kelvin, double pascal) {
    double moleFraction =
        NITROGEN_FRACTION * dryAirPascal(kelvin, pascal) / HenryConstant.nitrogenPascal(kelvin);
    return concentration(moleFraction, NITROGEN_GRAMS_PER_MOLE, kelvin);
  }

  private static double dryAirPascal(double kelvin, double pascal) {
    Range.check(pascal, LOWEST_PASCAL, HIGHEST_PASCAL, "Pa total pressure", "air saturation");
    double vapour = SaturationPressure.pascal(kelvin);
    if (vapour > pascal) {
      throw new IllegalArgumentException(
          "water boils at "
              + pascal
              + " Pa and "
              + kelvin
              + " K and holds no air: air saturation needs a temperature up to "
              + SaturationTemperature.kelvin(pascal)
              + " K");
    }
    return pascal - vapour;
  }

  private static double concentration(double moleFraction, double gramsPerMole, double kelvin) {
    return moleFraction
        * gramsPerMole
        / WATER_GRAMS_PER_MOLE
        * WaterDensity.kilogramsPerCubicMetre(kelvin)
        * MILLIGRAMS_PER_LITRE;
  }
}
