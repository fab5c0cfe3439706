package dev.tankwright.cli;

/** What a command's exit code says. */
final class ExitCode {
  /** Every requirement held. */
  static final int HELD = 0;

  /** A requirement failed or was not exercised. */
  static final int FAILED = 1;

  /** What was given is bad: a file, an option. */
  static final int BAD_INPUT = 2;

  /** The surroundings failed: a broker, a folder. */
  static final int SURROUNDINGS = 3;

  /** A defect of Tankwright itself. */
  static final int DEFECT = 70;

  /** A signal has stopped it: 128 and the number of SIGINT, as shells say it. */
  static final int STOPPED = 130;

  private ExitCode() {}

  /** The code for a run of many parts: a failed requirement says more than a missing broker. */
  static int worse(int one, int other) {
    if (one == FAILED || other == FAILED) {
      return FAILED;
    }
    return Math.max(one, other);
  }
}
