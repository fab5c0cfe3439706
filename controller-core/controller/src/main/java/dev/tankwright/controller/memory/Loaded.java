package dev.tankwright.controller.memory;

/** What became of loading a record. */
public enum Loaded {
  /**
   * No record was ever kept: both copies are erased, or one is and a power cut ended the very first
   * save in the other.
   */
  EMPTY,
  /** Both copies can be believed; the newer one was taken. */
  INTACT,
  /**
   * One copy can be believed and was taken. It may be the older one, so that the last save is
   * missing. A power cut during a save looks the same, with nothing missing.
   */
  ONE_COPY_DAMAGED,
  /** Something was kept, and no copy can be believed. */
  DAMAGED,
  /** The newest copy can be believed and is of another version or length; it was not taken. */
  OTHER_VERSION;

  /** True when the words were taken. */
  public boolean isTaken() {
    return this == INTACT || this == ONE_COPY_DAMAGED;
  }
}
