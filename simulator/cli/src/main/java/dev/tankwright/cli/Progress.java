package dev.tankwright.cli;

import java.io.PrintWriter;

/**
 * One line on a terminal that tells how far a run has come. Prints nothing at all where there is no
 * terminal.
 */
final class Progress {
  private static final String CLEAR_LINE = "\r\u001B[2K";
  private static final int MILLIS_PER_MINUTE = 60_000;

  private final PrintWriter terminal;

  /**
   * Makes a progress line.
   *
   * @param terminal where to show it; {@code null} for nowhere
   */
  Progress(PrintWriter terminal) {
    this.terminal = terminal;
  }

  void show(String what, long millis, long endMillis) {
    if (terminal != null) {
      terminal.print(
          CLEAR_LINE
              + what
              + ": minute "
              + millis / MILLIS_PER_MINUTE
              + " of "
              + endMillis / MILLIS_PER_MINUTE);
      terminal.flush();
    }
  }

  void say(String what) {
    if (terminal != null) {
      terminal.print(CLEAR_LINE + what);
      terminal.flush();
    }
  }

  void clear() {
    if (terminal != null) {
      terminal.print(CLEAR_LINE);
      terminal.flush();
    }
  }
}
