package dev.tankwright.events.outbox;

import java.io.IOException;

/** An outbox cannot be used; the message says which, why, and what would be right. */
public final class OutboxException extends IOException {
  private static final long serialVersionUID = 1L;

  OutboxException(String message) {
    super(message);
  }

  OutboxException(String message, Throwable cause) {
    super(message, cause);
  }
}
