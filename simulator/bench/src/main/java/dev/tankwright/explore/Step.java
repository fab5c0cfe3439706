package dev.tankwright.explore;

/** How the millisecond counter moves from one scan to the next. */
enum Step {
  /** By one scan. */
  USUAL(0, ShortTimes.SCAN_MS),
  /** By one scan, through the counter's end. */
  WRAPPING(-5, ShortTimes.SCAN_MS),
  /** Not at all. */
  STALLED(0, 0),
  /** By the longest time that counts as one scan. */
  LATE(0, 2 * ShortTimes.SCAN_MS),
  /** Further than a scan can be late. */
  JUMPING(0, 2 * ShortTimes.SCAN_MS + 1),
  /** Back. */
  BACKWARDS(0, -ShortTimes.SCAN_MS);

  /** Reading in the scan before. */
  final int from;

  /** How far it moves, ms. */
  final int millis;

  Step(int from, int millis) {
    this.from = from;
    this.millis = millis;
  }
}
