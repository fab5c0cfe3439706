package dev.tankwright.cli;

import dev.tankwright.record.StoreException;
import java.io.PrintWriter;

/** Turns a database error into a message and an exit code. */
final class StoreFailures {
  private StoreFailures() {}

  /** Prints the error and returns the exit code: bad input where a retry cannot help. */
  static int say(StoreException e, PrintWriter err) {
    err.println("tankwright: --db: " + e.getMessage());
    return e.isBadInput() ? ExitCode.BAD_INPUT : ExitCode.ENVIRONMENT;
  }
}
