package dev.tankwright.plant;

/**
 * Seeded chance for the plant: the SplitMix64 generator of Steele, Lea and Flood 2014. The same
 * seed gives the same values.
 */
final class Noise {
  private static final double UNIT = 1.0 / (1L << 53);

  private long state;

  Noise(long seed) {
    state = seed;
  }

  /** An evenly spread value from −0.5 up to, but not including, 0.5. */
  double centred() {
    return (next() >>> 11) * UNIT - 0.5;
  }

  boolean coin() {
    return next() < 0;
  }

  private long next() {
    state += 0x9E3779B97F4A7C15L;
    long z = state;
    z = (z ^ (z >>> 30)) * 0xBF58476D1CE4E5B9L;
    z = (z ^ (z >>> 27)) * 0x94D049BB133111EBL;
    return z ^ (z >>> 31);
  }
}
