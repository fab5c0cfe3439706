package dev.tankwright.controller.board;

/** What paused or ended a cycle. */
public enum CycleCause {
  /** Nothing but its plan: the cycle was completed. */
  NONE,
  /** The operator asked for it. */
  OPERATOR,
  /** The lid was opened. */
  LID,
  /** Mains, or the supply of the board, was lost. */
  POWER,
  /** The pause lasted longer than it may. */
  PAUSE_LIMIT,
  /** A fault was latched. */
  FAULT;

  private static final CycleCause[] ALL = values();

  /** The cause with the given ordinal. */
  public static CycleCause of(int ordinal) {
    return ALL[ordinal];
  }
}
