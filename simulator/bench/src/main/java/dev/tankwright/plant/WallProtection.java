package dev.tankwright.plant;

/**
 * The hardware's own protection of the heated wall: a self-holding limiter and, as its backup, a
 * thermal fuse. Limits are common practice, no source: limiter 80–90 °C, fuse 100–130 °C for a bath
 * of 60 °C. The limiter stands a little above what a wall under full heat reaches in a bath at its
 * hottest.
 */
public final class WallProtection {
  /** Temperature of the heated wall at which the limiter opens, °C. */
  public static final double LIMITER_CELSIUS = 90;

  /** Temperature of the heated wall at which the fuse opens, °C. */
  public static final double FUSE_CELSIUS = 120;

  private boolean limiterOpen;
  private boolean fuseOpen;

  void step(double wallCelsius, BrokenParts broken) {
    limiterOpen |= wallCelsius >= LIMITER_CELSIUS && !broken.has(PartFault.LIMITER_STUCK);
    fuseOpen |= wallCelsius >= FUSE_CELSIUS && !broken.has(PartFault.FUSE_STUCK);
  }

  boolean isOpen() {
    return limiterOpen || fuseOpen;
  }
}
