package dev.tankwright.controller.board;

/** Why a command was not carried out. */
public enum Refusal {
  /** The command has no meaning in the present phase. */
  NOT_IN_THIS_PHASE,
  /** The lid is not closed. */
  LID_OPEN,
  /** The solution stands below the minimum. */
  LEVEL_TOO_LOW,
  /** No recipe came with the command, or its values lie outside the profile's limits. */
  RECIPE_OUT_OF_RANGE,
  /** The cause of a latched fault is still present. */
  CAUSE_PRESENT,
  /** A latched fault needs service before the device may be used again. */
  SERVICE_NEEDED,
  /** The drain valve is not closed. */
  DRAIN_NOT_CLOSED,
  /** Mains is absent. */
  MAINS_ABSENT,
  /** A foil check is acknowledged with a verdict only. */
  VERDICT_MISSING,
  /** The setpoint is hotter than the chemistry's own instructions allow. */
  TOO_HOT_FOR_CHEMISTRY,
  /** The solution is older than it may be. */
  SOLUTION_DUE;

  private static final Refusal[] ALL = values();

  /** The refusal with the given ordinal. */
  public static Refusal of(int ordinal) {
    return ALL[ordinal];
  }
}
