package dev.tankwright.hunt;

import java.util.Locale;

/** How a search chooses its points. */
public enum Method {
  /** Covariance matrix adaptation evolution strategy, restarted until the budget is spent. */
  CMA_ES,
  /** Points drawn evenly from all spaces: what an optimiser must beat. */
  RANDOM;

  /** Name on the command line. */
  public String key() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }
}
