package dev.tankwright.plant.properties;

/** The one place where degrees Celsius become kelvin, and back (ITS-90: t = T − 273.15 K). */
public final class Celsius {
  private static final double ZERO_KELVIN = 273.15;
  private static final String SCALE = "the temperature scale";

  private Celsius() {}

  /**
   * Thermodynamic temperature of a temperature in °C.
   *
   * @param celsius temperature, °C, −273.15 and up
   * @return K
   * @throws IllegalArgumentException below absolute zero, and for NaN and infinity
   */
  public static double toKelvin(double celsius) {
    Range.check(celsius, -ZERO_KELVIN, Double.MAX_VALUE, "°C", SCALE);
    return celsius + ZERO_KELVIN;
  }

  /**
   * Temperature in °C of a thermodynamic temperature.
   *
   * @param kelvin temperature, K, 0 and up
   * @return °C
   * @throws IllegalArgumentException below absolute zero, and for NaN and infinity
   */
  public static double fromKelvin(double kelvin) {
    Range.check(kelvin, 0, Double.MAX_VALUE, "K", SCALE);
    return kelvin - ZERO_KELVIN;
  }
}
