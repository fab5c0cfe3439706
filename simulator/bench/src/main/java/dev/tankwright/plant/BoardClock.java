package dev.tankwright.plant;

/** The board's free-running millisecond counter. Once repaired it goes on from where it stands. */
final class BoardClock {
  private final int stepMillis;
  private double aheadMillis;

  BoardClock(int stepMillis) {
    this.stepMillis = stepMillis;
  }

  /**
   * Reads the counter; called once per scan.
   *
   * @param millis what a counter that was never broken would read
   */
  int read(int millis, BrokenParts broken) {
    if (!broken.none()) {
      boolean stalled = broken.has(PartFault.CLOCK_STALLED);
      aheadMillis +=
          stalled
              ? -stepMillis
              : stepMillis
                  * (broken.size(PartFault.CLOCK_FAST) - broken.size(PartFault.CLOCK_SLOW));
    }
    return millis + (int) Math.floor(aheadMillis);
  }
}
