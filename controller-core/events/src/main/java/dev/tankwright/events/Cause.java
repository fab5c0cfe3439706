package dev.tankwright.events;

/** What paused a cycle, or ended it before its time. */
public enum Cause {
  /** The operator wished it. */
  OPERATOR,
  /** The lid was opened. */
  LID,
  /** A pause lasted longer than it may. */
  PAUSE_LIMIT,
  /** A fault was latched. */
  FAULT,
  /** Power was lost, be it mains alone or the whole device. */
  MAINS
}
