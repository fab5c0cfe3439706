package dev.tankwright.scenario.yaml;

/**
 * A place in a file.
 *
 * @param file the file as problems name it; empty for the file that is read
 * @param line line, 1 for the first
 * @param column column in characters (code points), 1 for the first
 */
public record Place(String file, int line, int column) {
  /** Where a file begins; also the place of what concerns the file as a whole. */
  public static final Place START = new Place(1, 1);

  /** A place in the file that is read. */
  public Place(int line, int column) {
    this("", line, column);
  }

  /** The place a number of characters further on in the same line. */
  Place plus(int characters) {
    return new Place(file, line, column + characters);
  }

  /** For example {@code line 12}, or {@code base.yaml, line 12}. */
  @Override
  public String toString() {
    return (file.isEmpty() ? "" : file + ", ") + "line " + line;
  }
}
