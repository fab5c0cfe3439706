package dev.tankwright.plant.properties;

/** The one place where degrees Celsius become kelvin. */
public final class Celsius {
  private static final double ZERO_KELVIN = 273.15;

  private Celsius() {}

  /** Thermodynamic temperature, K, of a temperature in °C. */
  public static double toKelvin(double celsius) {
    return celsius + ZERO_KELVIN;
  }
}
