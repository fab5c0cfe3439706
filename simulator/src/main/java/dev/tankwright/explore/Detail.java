package dev.tankwright.explore;

/** How finely the world is divided into classes. */
public enum Detail {
  /** Every class of temperature, every level and every key. */
  FINE,
  /**
   * The thresholds of regulation and of the cut-off, dry and full, one recipe and the keys without
   * their variants: for sets with many faulty parts, and for a quick look.
   */
  COARSE
}
