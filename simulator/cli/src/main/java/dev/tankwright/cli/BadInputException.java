package dev.tankwright.cli;

/**
 * Something that was given cannot be used. The message is printed as it is: what is wrong, where,
 * and what would be right, one line for each problem.
 */
final class BadInputException extends Exception {
  private static final long serialVersionUID = 1L;

  BadInputException(String message) {
    super(message);
  }
}
