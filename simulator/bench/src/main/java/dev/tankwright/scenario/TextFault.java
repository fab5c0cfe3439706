package dev.tankwright.scenario;

/**
 * Something wrong inside one value of a file; whoever knows the value's place turns it into a
 * problem.
 */
final class TextFault extends Exception {
  private static final long serialVersionUID = 1L;

  private final int offset;

  /**
   * Made where the fault is seen.
   *
   * @param offset where in the value, chars from its beginning
   * @param message what is wrong and what would be right
   */
  TextFault(int offset, String message) {
    super(message, null, false, false);
    this.offset = offset;
  }

  int offset() {
    return offset;
  }
}
