package dev.tankwright.campaign;

/** A result file, or a set of them, cannot be used. The message says which, why and what to do. */
public final class ResultFileException extends Exception {
  private static final long serialVersionUID = 1L;

  ResultFileException(String message) {
    super(message);
  }
}
