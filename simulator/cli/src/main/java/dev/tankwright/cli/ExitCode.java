package dev.tankwright.cli;

/** Exit codes of all commands. */
final class ExitCode {
  /** Every requirement held. */
  static final int HELD = 0;

  /** A requirement failed or was not exercised. */
  static final int FAILED = 1;

  /** Invalid input: a file, an option. */
  static final int BAD_INPUT = 2;

  /** Environment error: a broker, a folder. */
  static final int ENVIRONMENT = 3;

  /** Internal error, a bug in Tankwright. */
  static final int INTERNAL = 70;

  /** Stopped by a signal: 128 plus the number of SIGINT, the convention of shells. */
  static final int STOPPED = 130;

  private ExitCode() {}

  /** The code for a run of many parts: a failed requirement outranks a missing broker. */
  static int worse(int one, int other) {
    if (one == FAILED || other == FAILED) {
      return FAILED;
    }
    return Math.max(one, other);
  }
}
