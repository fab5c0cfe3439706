package dev.tankwright.events;

/** Bytes that are no event of a device of ours; the message says what is wrong with them. */
public final class NotAnEventException extends Exception {
  private static final long serialVersionUID = 1L;

  /** Says what is wrong and what would be right. */
  public NotAnEventException(String message) {
    super(message);
  }

  /** Says what is wrong, and what found it. */
  public NotAnEventException(String message, Throwable cause) {
    super(message, cause);
  }
}
