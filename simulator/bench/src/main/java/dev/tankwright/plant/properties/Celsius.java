package dev.tankwright.plant.properties;

/** The one place where degrees Celsius become kelvin, and back (ITS-90: t = T − 273.15 K). */
public final class Celsius {
  private static final double ZERO_KELVIN = 273.15;
  // No scale ends here; a value beyond is no temperature of anything simulated, but a mistake.
  private static final double HIGHEST = 1e6;
  private static final String SCALE = "the temperature scale";

  private Celsius() {}

  /**
   * Thermodynamic temperature of a temperature in °C.
   *
   * @param celsius temperature, °C, −273.15 to 1e6
   * @return K
   * @throws IllegalArgumentException outside this range, and for NaN
   */
  public static double toKelvin(double celsius) {
    Range.check(celsius, -ZERO_KELVIN, HIGHEST, "°C", SCALE);
    return celsius + ZERO_KELVIN;
  }

  /**
   * Temperature in °C of a thermodynamic temperature.
   *
   * @param kelvin temperature, K, 0 to 1e6
   * @return °C
   * @throws IllegalArgumentException outside this range, and for NaN
   */
  public static double fromKelvin(double kelvin) {
    Range.check(kelvin, 0, HIGHEST, "K", SCALE);
    return kelvin - ZERO_KELVIN;
  }
}
