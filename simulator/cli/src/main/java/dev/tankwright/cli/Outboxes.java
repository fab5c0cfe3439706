package dev.tankwright.cli;

import dev.tankwright.events.outbox.Outbox;
import dev.tankwright.events.outbox.OutboxException;
import dev.tankwright.events.outbox.OutboxSettings;
import java.nio.file.Path;
import java.time.InstantSource;

/** Opens an outbox for each run: the named file, or a temporary one of its own. One thread. */
final class Outboxes implements AutoCloseable {
  private final Path named;
  private final NativeFolder temporary;
  private int opened;

  private Outboxes(Path named, NativeFolder temporary) {
    this.named = named;
    this.temporary = temporary;
  }

  /**
   * Gets ready.
   *
   * @param named the file to keep, or null for temporary ones
   */
  static Outboxes open(Path named) {
    return new Outboxes(named, NativeFolder.open());
  }

  /** True when what is kept outlives the run. */
  boolean lasts() {
    return named != null;
  }

  /** The outbox of the next run: the named file, or a new one. */
  Outbox next() throws BadInputException {
    return openFile(named == null ? temporary.path().resolve("outbox-" + ++opened + ".db") : named);
  }

  /** A folder that is removed in the end. */
  Path temporary() {
    return temporary.path();
  }

  /** Opens a file that may hold events. */
  Outbox openFile(Path file) throws BadInputException {
    try {
      return Outbox.open(file, OutboxSettings.STANDARD, InstantSource.system());
    } catch (OutboxException e) {
      throw new BadInputException("tankwright: --outbox: " + e.getMessage());
    }
  }

  /** Removes what was temporary. */
  @Override
  public void close() {
    temporary.close();
  }
}
