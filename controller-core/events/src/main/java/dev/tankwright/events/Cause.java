package dev.tankwright.events;

import java.util.List;

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
  MAINS;

  // By the numbers that the controller's notices of a pause and of a stop carry.
  private static final List<Cause> OF_PAUSE = List.of(OPERATOR, LID, MAINS);
  private static final List<Cause> OF_STOP = List.of(OPERATOR, PAUSE_LIMIT);

  /**
   * What paused a cycle.
   *
   * @param number the first number of the notice that says so
   * @throws IndexOutOfBoundsException when no cause has that number
   */
  static Cause ofPause(int number) {
    return OF_PAUSE.get(number);
  }

  /**
   * What stopped a cycle.
   *
   * @param number the first number of the notice that says so
   * @throws IndexOutOfBoundsException when no cause has that number
   */
  static Cause ofStop(int number) {
    return OF_STOP.get(number);
  }
}
