package dev.tankwright.plant;

import dev.tankwright.plant.properties.AirSaturation;
import dev.tankwright.plant.properties.Celsius;

/**
 * Dissolved oxygen, standing for all dissolved gas.
 *
 * <p>Under ultrasound it falls to a quasi-equilibrium below saturation, dC/dt = −k (C − Cq) (form:
 * Rozenberg 1973); k = 1/(3 min) at full drive and Cq = 0.6 of saturation are estimates, for which
 * no trustworthy published value was found. Without ultrasound it returns to saturation: slowly
 * from below (surface transfer, hours), faster from above (bubbles on the warm wall, an estimate of
 * 15 min).
 *
 * <p>Saturation is that of {@link AirSaturation} at 101.325 kPa, taken at 1 °C below its range and
 * at 95 °C above, short of boiling, where no air would be left to compare with.
 */
final class Gas {
  private static final double DEGAS_PER_SECOND = 1.0 / 180;
  private static final double QUASI_EQUILIBRIUM = 0.6;
  private static final double DISSOLVE_PER_SECOND = 1.0 / (3 * 3600);
  private static final double ESCAPE_PER_SECOND = 1.0 / 900;

  private static final double ATMOSPHERE_PASCAL = 101_325;
  private static final double LOWEST_CELSIUS = 1;
  private static final double HIGHEST_CELSIUS = 95;

  private double milligramsPerLitre;
  private double saturationMilligrams;

  Gas(BathStart start) {
    saturationMilligrams = saturated(start.celsius());
    milligramsPerLitre = start.gasSaturation() * saturationMilligrams;
  }

  void step(double celsius, double driveShare, double seconds) {
    saturationMilligrams = saturated(celsius);
    double excess = milligramsPerLitre - saturationMilligrams;
    double rate = -excess * (excess > 0 ? ESCAPE_PER_SECOND : DISSOLVE_PER_SECOND);
    if (driveShare > 0) {
      rate -=
          DEGAS_PER_SECOND
              * driveShare
              * (milligramsPerLitre - QUASI_EQUILIBRIUM * saturationMilligrams);
    }
    milligramsPerLitre += rate * seconds;
  }

  /** Mixes in solution that was saturated at the temperature at which it was poured. */
  void mix(double litres, double celsius, double litresBefore) {
    double added = saturated(celsius);
    milligramsPerLitre =
        (milligramsPerLitre * litresBefore + added * litres)
            / Math.max(1e-9, litresBefore + litres);
  }

  /** Dissolved gas as a fraction of saturation. */
  double saturation() {
    return milligramsPerLitre / saturationMilligrams;
  }

  private static double saturated(double celsius) {
    double bounded = Math.max(LOWEST_CELSIUS, Math.min(HIGHEST_CELSIUS, celsius));
    return AirSaturation.oxygenMilligramsPerLitre(Celsius.toKelvin(bounded), ATMOSPHERE_PASCAL);
  }
}
