package dev.tankwright.explore;

import java.util.Locale;

/** How finely the world is divided into classes. */
public enum Detail {
  /** Every class of temperature, every level and every key. */
  FINE,
  /**
   * The thresholds of regulation and of the cut-off, dry and full, two recipes and the keys without
   * their variants: for sets with many faulty parts, and for a quick look.
   */
  COARSE,
  /**
   * As {@link #COARSE}, and a faulty sensor reads too cold, too hot or open: for sensors that are
   * faulty together with another part.
   */
  SPARSE,
  /**
   * As {@link #COARSE}, and the bath warms and cools only from a class to its neighbour, so that
   * its class is part of the state.
   */
  GRADUAL;

  boolean isGradual() {
    return this == GRADUAL;
  }

  /** Text behind the name of a set; the coarse world is not named. */
  String suffix() {
    return this == COARSE ? "" : " (" + name().toLowerCase(Locale.ROOT) + ")";
  }
}
