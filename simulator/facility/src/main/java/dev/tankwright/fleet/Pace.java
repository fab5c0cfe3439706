package dev.tankwright.fleet;

import java.util.function.LongSupplier;

/** How far a fleet may be by a clock, and in what slices it goes there. One thread. */
final class Pace {
  private static final double SLICES_PER_SECOND = 10;
  private static final long LONGEST_MILLIS = 60_000;
  private static final long STEP_MILLIS = 10;
  private static final double NANOS_PER_MILLI = 1e6;

  private final double speed;
  private final LongSupplier nanoTime;
  private final long sliceMillis;
  private long beginNanos;

  /**
   * Makes a pace.
   *
   * @param speed simulated seconds per second, infinite for as fast as it goes
   */
  Pace(double speed, LongSupplier nanoTime) {
    this.speed = speed;
    this.nanoTime = nanoTime;
    double wished = Math.min(LONGEST_MILLIS, 1_000 * speed / SLICES_PER_SECOND);
    sliceMillis = Math.max(STEP_MILLIS, ((long) (wished / STEP_MILLIS)) * STEP_MILLIS);
  }

  void begin() {
    beginNanos = nanoTime.getAsLong();
  }

  /** Where the slice after a moment of the day ends, ms. */
  long sliceAfter(long dayMillis) {
    return dayMillis + sliceMillis;
  }

  /** How long to wait until a moment of the day may be reached, ns; 0 when it may be now. */
  long waitNanos(long dayMillis) {
    double due = dayMillis / speed * NANOS_PER_MILLI;
    return Math.max(0, (long) due - (nanoTime.getAsLong() - beginNanos));
  }
}
