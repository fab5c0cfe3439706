package dev.tankwright.plant.bath;

/**
 * How fast gas leaves and enters the liquid. All are estimates: no trustworthy published value was
 * found for a bath. Time constants of 3–10 min are plausible for degassing in general; here they
 * are held to those at which the five minutes of common practice do degas a bath, and the
 * quasi-equilibrium, plausible from 0.5 to 0.7, to what a foil check can tell.
 *
 * @param degasPerSecond rate under full drive, 1/s; 1/210–1/180
 * @param quasiEquilibrium where degassing comes to rest, as a fraction of saturation; 0.52–0.58
 * @param surfaceMetresPerSecond transfer velocity of a still surface, m/s; 1–5 cm/h (from memory)
 * @param bubblesPerSecond rate at which an excess above saturation bubbles out of a still bath,
 *     1/s; 1/1200–1/600
 */
public record GasRates(
    double degasPerSecond,
    double quasiEquilibrium,
    double surfaceMetresPerSecond,
    double bubblesPerSecond) {

  private static final double CENTIMETRE_PER_HOUR = 0.01 / 3600;

  /** About the middle of the plausible ranges. */
  public static GasRates typical() {
    return new GasRates(1.0 / 195, 0.55, 3 * CENTIMETRE_PER_HOUR, 1.0 / 900);
  }

  /** The lower end of every plausible range. */
  public static GasRates lowest() {
    return new GasRates(1.0 / 210, 0.52, CENTIMETRE_PER_HOUR, 1.0 / 1200);
  }

  /** The upper end of every plausible range. */
  public static GasRates highest() {
    return new GasRates(1.0 / 180, 0.58, 5 * CENTIMETRE_PER_HOUR, 1.0 / 600);
  }
}
