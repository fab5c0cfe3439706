package dev.tankwright.scenario.yaml;

/**
 * Something wrong inside one value of a file; whoever knows the value's place turns it into a
 * problem.
 */
public final class TextFault extends Exception {
  private static final long serialVersionUID = 1L;

  private final int offset;

  /**
   * Made where the fault is seen.
   *
   * @param offset where in the value, chars from its beginning
   * @param message what is wrong and what would be right
   */
  public TextFault(int offset, String message) {
    super(message, null, false, false);
    this.offset = offset;
  }

  public int offset() {
    return offset;
  }
}
