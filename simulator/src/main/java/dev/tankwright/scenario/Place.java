package dev.tankwright.scenario;

/**
 * A place in a file.
 *
 * @param line line, 1 for the first
 * @param column column in characters (code points), 1 for the first
 */
public record Place(int line, int column) {
  /** Where a file begins; also the place of what concerns the file as a whole. */
  public static final Place START = new Place(1, 1);

  /** The place a number of characters further on in the same line. */
  Place plus(int characters) {
    return new Place(line, column + characters);
  }
}
