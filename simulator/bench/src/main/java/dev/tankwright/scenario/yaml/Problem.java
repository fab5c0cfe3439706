package dev.tankwright.scenario.yaml;

import java.util.Comparator;

/**
 * Something in a scenario file that is wrong, or that a person should look at.
 *
 * @param file the file as the caller named it
 * @param line line, 1 for the first
 * @param column column in characters (code points), 1 for the first
 * @param message what is wrong and what would be right, in one line
 */
public record Problem(String file, int line, int column, String message) {
  /** By file, line and column. */
  public static final Comparator<Problem> ORDER =
      Comparator.comparing(Problem::file)
          .thenComparingInt(Problem::line)
          .thenComparingInt(Problem::column);

  /** A problem at a place, in the file that the place names, or else in the one that is read. */
  public Problem(String file, Place place, String message) {
    this(place.file().isEmpty() ? file : place.file(), place.line(), place.column(), message);
  }

  /** The problem as one line, {@code file:line:column: message}. */
  @Override
  public String toString() {
    return file + ":" + line + ":" + column + ": " + message;
  }
}
