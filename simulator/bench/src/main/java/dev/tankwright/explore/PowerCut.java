package dev.tankwright.explore;

/** How the power of the whole device is lost. The memory was saved in the last scan. */
enum PowerCut {
  /** For less than a second. */
  SHORT(0, true),
  /** So long that everything that ages has aged. */
  LONG(1, true),
  /** What was kept is damaged. */
  MEMORY_DAMAGED(0, false);

  /** For how long the clock says that the supply was gone, s. */
  final int seconds;

  /** Whether the next controller is given what was kept. */
  final boolean recalled;

  PowerCut(int seconds, boolean recalled) {
    this.seconds = seconds;
    this.recalled = recalled;
  }
}
