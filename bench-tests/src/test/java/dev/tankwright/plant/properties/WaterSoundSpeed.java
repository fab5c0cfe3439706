package dev.tankwright.plant.properties;

/**
 * Speed of sound in pure water at atmospheric pressure.
 *
 * <p>Source: W. Marczak, Water as a standard in the measurements of speed of sound in liquids, J.
 * Acoust. Soc. Am. 102 (1997) 2776–2779, polynomial of fifth degree in °C (ITS-90); range 0 to 95
 * °C.
 */
public final class WaterSoundSpeed {
  private static final double LOWEST_CELSIUS = 0;
  private static final double HIGHEST_CELSIUS = 95;

  private static final double K0 = 1.402385e3;
  private static final double K1 = 5.038813;
  private static final double K2 = -5.799136e-2;
  private static final double K3 = 3.287156e-4;
  private static final double K4 = -1.398845e-6;
  private static final double K5 = 2.787860e-9;

  private WaterSoundSpeed() {}

  /**
   * Speed of sound.
   *
   * @param celsius temperature, °C, 0 to 95
   * @return m/s
   * @throws IllegalArgumentException outside the range of the polynomial
   */
  public static double metresPerSecond(double celsius) {
    Range.check(celsius, LOWEST_CELSIUS, HIGHEST_CELSIUS, "°C", "Marczak 1997");
    double t = celsius;
    return K0 + t * (K1 + t * (K2 + t * (K3 + t * (K4 + t * K5))));
  }
}
