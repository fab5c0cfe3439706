package dev.tankwright.plant;

/**
 * Initial state of a bath.
 *
 * @param litres filled volume, L, 0 to the tank's brim
 * @param celsius temperature of the solution and of the tank, °C, 1–95
 * @param ambientCelsius temperature of the room, °C, 5–40
 * @param gasSaturation dissolved gas as a fraction of saturation at the filling temperature, 0–1.2
 * @param humidity relative humidity of the room, 0–1
 * @param detergent share of the right detergent in the solution: 1 as it should be, 0 plain water
 * @param load what hangs in the basket
 */
public record BathStart(
    double litres,
    double celsius,
    double ambientCelsius,
    double gasSaturation,
    double humidity,
    double detergent,
    Load load) {

  /**
   * What hangs in the basket.
   *
   * @param kilograms mass of the instruments, kg, at least 0
   * @param overlap share of them that hides behind others, 0–1
   */
  public record Load(double kilograms, double overlap) {
    /** An empty basket. */
    public static final Load NONE = new Load(0, 0);
  }

  /** A room of 50 % humidity, a solution with its detergent, and an empty basket. */
  public BathStart(double litres, double celsius, double ambientCelsius, double gasSaturation) {
    this(litres, celsius, ambientCelsius, gasSaturation, 0.5, 1, Load.NONE);
  }
}
