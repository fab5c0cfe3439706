package dev.tankwright.plant.effects;

/**
 * Soil left on the load, as a share of what was brought in: it falls at a rate that activity sets
 * and that overlapping instruments slow down. An estimate.
 */
public final class Soil {
  private final EffectRates rates;
  private double left = 1;

  /** Makes a fully soiled load. */
  public Soil(EffectRates rates) {
    this.rates = rates;
  }

  /** A newly soiled load. */
  public void renew() {
    left = 1;
  }

  /**
   * Lets time pass.
   *
   * @param activity cavitation activity index, 0–1
   * @param overlap share of the load that hides behind other instruments, 0–1
   */
  public void step(double activity, double overlap, double seconds) {
    left -= left * rates.soilPerSecond() * activity * (1 - overlap) * seconds;
  }

  /** Share of the soil that is left, 0–1. */
  public double left() {
    return left;
  }
}
