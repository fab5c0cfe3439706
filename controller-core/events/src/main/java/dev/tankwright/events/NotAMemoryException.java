package dev.tankwright.events;

/** Octets that are no memory of a host; the message says why. */
public final class NotAMemoryException extends Exception {
  private static final long serialVersionUID = 1L;

  NotAMemoryException(String message) {
    super(message);
  }

  NotAMemoryException(String message, Throwable cause) {
    super(message, cause);
  }
}
