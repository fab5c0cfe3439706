package dev.tankwright.controller.board;

/** What a notice tells; the meaning of its two arguments stands beside each kind. */
public enum NoticeKind {
  /** The phase changed. First: ordinal of the phase left; second: ordinal of the phase entered. */
  PHASE_CHANGED,
  /** A cycle started. First: ordinal of the programme; second: setpoint in m°C. */
  CYCLE_STARTED,
  /**
   * The cycle was paused. First: ordinal of the {@link CycleCause}; second: ordinal of the phase
   * that is held.
   */
  CYCLE_PAUSED,
  /** The cycle goes on. First: ordinal of the phase it goes on with. */
  CYCLE_RESUMED,
  /** The cycle ended as planned. First: ordinal of the {@link CycleCause}. */
  CYCLE_COMPLETED,
  /**
   * The operator, or a pause that lasted too long, ended the cycle. First: ordinal of the {@link
   * CycleCause}.
   */
  CYCLE_STOPPED,
  /** A fault ended the cycle. First: ordinal of the {@link CycleCause}. */
  CYCLE_INTERRUPTED,
  /** A fault was latched. First: its ordinal. */
  FAULT_RAISED,
  /** A fault was cleared. First: its ordinal. */
  FAULT_CLEARED,
  /** A command was refused. First: ordinal of the command; second: ordinal of the refusal. */
  COMMAND_REFUSED,
  /** Fresh solution was declared. */
  SOLUTION_FILLED,
  /** The solution has been degassed. */
  SOLUTION_DEGASSED,
  /** The tank has been emptied. */
  SOLUTION_DRAINED,
  /** The solution has reached its age. */
  SOLUTION_DUE,
  /** The working day is over: the tank is to be drained and dried. */
  DRAIN_DUE,
  /** The next foil check is due. */
  FOIL_DUE,
  /** A foil check was judged. First: ordinal of the verdict. */
  FOIL_CHECKED,
  /** The ring was full. First: how many notices are missing before this one. */
  NOTICES_LOST;

  private static final NoticeKind[] ALL = values();

  /** The kind with the given ordinal. */
  public static NoticeKind of(int ordinal) {
    return ALL[ordinal];
  }
}
