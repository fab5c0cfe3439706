package dev.tankwright.record;

import java.io.IOException;

/** A database cannot be used; the message says which, why, and what would be right. */
public final class StoreException extends IOException {
  private static final long serialVersionUID = 1L;

  private final boolean badInput;

  private StoreException(String message, Throwable cause, boolean badInput) {
    super(message, cause);
    this.badInput = badInput;
  }

  /** What was given cannot be right, however often it is tried. */
  static StoreException bad(String message) {
    return new StoreException(message, null, true);
  }

  /** What was given may be right, but cannot be used now. */
  static StoreException failing(String message, Throwable cause) {
    return new StoreException(message, cause, false);
  }

  /** True when another try cannot help. */
  public boolean isBadInput() {
    return badInput;
  }
}
