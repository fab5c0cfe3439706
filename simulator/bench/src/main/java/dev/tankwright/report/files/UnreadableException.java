package dev.tankwright.report.files;

/**
 * A folder or a file of results cannot be used. The message says what is wrong, where, and what
 * would be right.
 */
public final class UnreadableException extends Exception {
  private static final long serialVersionUID = 1L;

  /** What is wrong, where, and what would be right. */
  public UnreadableException(String message) {
    super(message);
  }
}
