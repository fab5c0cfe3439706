package dev.tankwright.explore;

/** What a feedback says. */
enum Answer {
  /** What is driven. */
  FOLLOWS,
  /** The opposite of what is driven. */
  OPPOSES;

  boolean of(boolean truth) {
    return truth == (this == FOLLOWS);
  }
}
