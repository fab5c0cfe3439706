package dev.tankwright.cli;

import dev.tankwright.record.StoreException;
import java.io.PrintWriter;

/** Turns what is wrong with a database into a message and an exit code. */
final class StoreFailures {
  private StoreFailures() {}

  /** Says it, and gives the exit code: bad input where another try cannot help. */
  static int say(StoreException e, PrintWriter err) {
    err.println("tankwright: --db: " + e.getMessage());
    return e.isBadInput() ? ExitCode.BAD_INPUT : ExitCode.SURROUNDINGS;
  }
}
