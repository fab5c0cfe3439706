package dev.tankwright.cli;

import java.io.PrintWriter;
import java.util.OptionalLong;
import java.util.function.LongSupplier;

/**
 * Tells something now and then: on a terminal in one line that is written over, elsewhere in a line
 * of its own every ten seconds. Not thread-safe.
 */
final class PacedLine {
  private static final long ELSEWHERE = 10_000_000_000L;

  private final Progress line;
  private final PrintWriter pipe;
  private final LongSupplier nanoseconds;
  private final long between;
  private long last;

  /**
   * Begins to count.
   *
   * @param line the line of a terminal; silent where there is none
   * @param pipe where to write lines instead; {@code null} for nowhere
   * @param onTerminal nanoseconds between two looks of the line of a terminal
   */
  PacedLine(Progress line, PrintWriter pipe, LongSupplier nanoseconds, long onTerminal) {
    this.line = line;
    this.pipe = pipe;
    this.nanoseconds = nanoseconds;
    between = pipe == null ? onTerminal : ELSEWHERE;
    last = nanoseconds.getAsLong();
  }

  /** Nanoseconds since it was time last, when it is time again; empty when it is not. */
  OptionalLong due() {
    long now = nanoseconds.getAsLong();
    long since = now - last;
    if (since < between) {
      return OptionalLong.empty();
    }
    last = now;
    return OptionalLong.of(since);
  }

  /** Says it at once. */
  void say(String text) {
    line.say(text);
    if (pipe != null) {
      pipe.println(text);
      pipe.flush();
    }
  }
}
