package dev.tankwright.controller.board;

/** What an operator can ask for. A command acts once, when its sequence number changes. */
public enum Command {
  /** Nothing is asked. */
  NONE,
  /** Start a cycle with the recipe given beside the command. */
  START,
  /** Hold the running cycle. */
  PAUSE,
  /** Go on with a paused cycle. */
  RESUME,
  /** End the cycle, or the draining, before its time. */
  STOP,
  /**
   * Take note of a completed cycle or of an advisory; after a foil check it carries the verdict.
   */
  ACKNOWLEDGE,
  /** Empty the tank through its drain. */
  DRAIN,
  /** Declare that the tank has been filled with fresh solution. */
  FRESH_SOLUTION,
  /** Leave a lockout whose cause is gone. */
  RESET;

  private static final Command[] ALL = values();

  /** The command with the given ordinal. */
  public static Command of(int ordinal) {
    return ALL[ordinal];
  }
}
