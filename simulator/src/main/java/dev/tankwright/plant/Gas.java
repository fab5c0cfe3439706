package dev.tankwright.plant;

import dev.tankwright.plant.properties.OxygenSolubility;

/**
 * Dissolved oxygen, standing for all dissolved gas.
 *
 * <p>Under ultrasound it falls to a quasi-equilibrium below saturation, dC/dt = −k (C − Cq) (form:
 * Rozenberg 1973); k = 1/(3 min) at full drive and Cq = 0.6 of saturation are estimates, for which
 * no trustworthy published value was found. Without ultrasound it returns to saturation: slowly
 * from below (surface transfer, hours), faster from above (bubbles on the warm wall, an estimate of
 * 15 min).
 */
final class Gas {
  private static final double DEGAS_PER_SECOND = 1.0 / 180;
  private static final double QUASI_EQUILIBRIUM = 0.6;
  private static final double DISSOLVE_PER_SECOND = 1.0 / (3 * 3600);
  private static final double ESCAPE_PER_SECOND = 1.0 / 900;

  private double milligramsPerLitre;
  private double saturationMilligrams;

  Gas(BathStart start) {
    saturationMilligrams = OxygenSolubility.milligramsPerLitre(start.celsius());
    milligramsPerLitre = start.gasSaturation() * saturationMilligrams;
  }

  void step(double celsius, double driveShare, double seconds) {
    saturationMilligrams = OxygenSolubility.milligramsPerLitre(celsius);
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
    double added = OxygenSolubility.milligramsPerLitre(celsius);
    milligramsPerLitre =
        (milligramsPerLitre * litresBefore + added * litres)
            / Math.max(1e-9, litresBefore + litres);
  }

  /** Dissolved gas as a fraction of saturation. */
  double saturation() {
    return milligramsPerLitre / saturationMilligrams;
  }
}
