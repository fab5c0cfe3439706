package dev.tankwright.report.files;

import java.io.IOException;
import java.io.UncheckedIOException;

/** A file of a run could not be written. The message says which, and what stood in the way. */
public final class UnwritableException extends UncheckedIOException {
  private static final long serialVersionUID = 1L;

  /**
   * A failure to write.
   *
   * @param message what could not be written and what would be right
   * @param cause what the file system said
   */
  public UnwritableException(String message, IOException cause) {
    super(message, cause);
  }
}
