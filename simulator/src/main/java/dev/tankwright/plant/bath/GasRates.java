package dev.tankwright.plant.bath;

/**
 * How fast gas leaves and enters the liquid. All are estimates: no trustworthy published value was
 * found for a bath.
 *
 * @param degasPerSecond rate under full drive, 1/s; time constants of 3–10 min are plausible
 * @param quasiEquilibrium where degassing comes to rest, as a fraction of saturation; 0.5–0.7 is
 *     plausible
 * @param surfaceMetresPerSecond transfer velocity of a still surface, m/s; 1–5 cm/h (from memory)
 * @param bubblesPerSecond rate at which an excess above saturation bubbles out, 1/s
 */
public record GasRates(
    double degasPerSecond,
    double quasiEquilibrium,
    double surfaceMetresPerSecond,
    double bubblesPerSecond) {

  /** The middle of the plausible ranges. */
  public static GasRates typical() {
    return new GasRates(1.0 / 240, 0.6, 0.03 / 3600, 1.0 / 900);
  }
}
