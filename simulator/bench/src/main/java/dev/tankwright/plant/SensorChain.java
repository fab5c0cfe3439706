package dev.tankwright.plant;

/**
 * A Pt1000 in its well and the 12-bit converter behind it: first-order lag, the resistance of IEC
 * 60751 (R0 (1 + A t + B t²), from 0 °C up), and a reading that rounds to one count after noise of
 * half a count either way.
 */
final class SensorChain {
  /** What the converter reads at most, counts. */
  static final int FULL_SCALE = 4095;

  private static final double R0 = 1000;
  private static final double A = 3.9083e-3;
  private static final double B = -5.775e-7;

  // The converter's range, as in the controller's default profile: 900 to 1500 Ω.
  private static final double LOW_OHM = 900;
  private static final double COUNTS_PER_OHM = FULL_SCALE / 600.0;

  // What IEC 60751:2008 table 6 allows a sensor of class B, K at 0 °C and K more per degree.
  private static final double CLASS_B_AT_ZERO = 0.30;
  private static final double CLASS_B_PER_DEGREE = 0.005;

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
    double allowed = CLASS_B_AT_ZERO + CLASS_B_PER_DEGREE * Math.abs(celsius);
    double t = celsius + classB * allowed + errorKelvin;
    double ohm = R0 * (1 + t * (A + t * B));
    double exact = (ohm - LOW_OHM) * COUNTS_PER_OHM + noise.centred();
    // Adding a half and cutting rounds to the nearest for the positive values of the range.
    return Math.max(0, Math.min(FULL_SCALE, (int) (exact + 0.5)));
  }
}
