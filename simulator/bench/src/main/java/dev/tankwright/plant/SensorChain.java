package dev.tankwright.plant;

import dev.tankwright.plant.properties.PlatinumResistance;

/**
 * A Pt1000 in its well and the 12-bit converter behind it: first-order lag, the resistance of IEC
 * 60751, see {@link PlatinumResistance}, and a reading that rounds to one count after noise of half
 * a count either way.
 */
final class SensorChain {
  /** What the converter reads at most, counts. */
  static final int FULL_SCALE = 4095;

  private static final double R0 = 1000;

  // The converter's range, as in the controller's default profile: 900 to 1500 Ω.
  private static final double LOW_OHM = 900;
  private static final double COUNTS_PER_OHM = FULL_SCALE / 600.0;

  // A drift that grows for hours leaves the range of the standard, °C; by then the converter has
  // long reached its end.
  private static final double LOWEST = -200;
  private static final double HIGHEST = 850;

  // Of the class, °C; a bath gets nowhere near either end.
  private static final double LOWEST_OF_CLASS = -196;
  private static final double HIGHEST_OF_CLASS = 600;

  private final double stepShare;
  private final double classB;
  private final Noise noise;
  private double celsius;

  /**
   * Makes a sensor at a temperature.
   *
   * @param classB its error as a share of what class B allows, above 0 where it reads too warm
   */
  SensorChain(
      double tauSeconds, double stepSeconds, double startCelsius, double classB, Noise noise) {
    stepShare = stepSeconds / tauSeconds;
    this.classB = classB;
    celsius = startCelsius;
    this.noise = noise;
  }

  void step(double liquidCelsius) {
    celsius += (liquidCelsius - celsius) * stepShare;
  }

  /** Reads a sensor that is off by so many K; counts. */
  int read(double errorKelvin) {
    double allowed =
        PlatinumResistance.classBKelvin(bounded(celsius, LOWEST_OF_CLASS, HIGHEST_OF_CLASS));
    double shown = bounded(celsius + classB * allowed + errorKelvin, LOWEST, HIGHEST);
    double ohm = R0 * PlatinumResistance.ratio(shown);
    double exact = (ohm - LOW_OHM) * COUNTS_PER_OHM + noise.centred();
    // Adding a half and cutting rounds to the nearest for the positive values of the range.
    return Math.max(0, Math.min(FULL_SCALE, (int) (exact + 0.5)));
  }

  private static double bounded(double value, double low, double high) {
    return Math.max(low, Math.min(high, value));
  }
}
