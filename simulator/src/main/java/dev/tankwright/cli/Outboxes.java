package dev.tankwright.cli;

import dev.tankwright.events.outbox.Outbox;
import dev.tankwright.events.outbox.OutboxException;
import dev.tankwright.events.outbox.OutboxSettings;
import java.io.File;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.InstantSource;
import java.util.Comparator;
import java.util.stream.Stream;

/** Opens an outbox for each run: the named file, or a temporary one of its own. One thread. */
final class Outboxes implements AutoCloseable {
  // where SQLite's library is unpacked; its own place for that is left behind by a halt
  private static final String LIBRARY_FOLDER = "org.sqlite.tmpdir";

  private final Path named;
  private final Path temporary;
  private int opened;

  private Outboxes(Path named, Path temporary) {
    this.named = named;
    this.temporary = temporary;
  }

  /**
   * Gets ready.
   *
   * @param named the file to keep, or null for temporary ones
   */
  static Outboxes open(Path named) {
    try {
      Path temporary = Files.createTempDirectory("tankwright");
      if (System.getProperty(LIBRARY_FOLDER) == null) {
        System.setProperty(LIBRARY_FOLDER, temporary.toString());
      }
      return new Outboxes(named, temporary);
    } catch (IOException e) {
      throw new UncheckedIOException("no temporary folder can be made", e);
    }
  }

  /** True when what is kept outlives the run. */
  boolean lasts() {
    return named != null;
  }

  /** The outbox of the next run: the named file, or a new one. */
  Outbox next() throws BadInputException {
    return openFile(named == null ? temporary.resolve("outbox-" + ++opened + ".db") : named);
  }

  /** A folder that is removed in the end. */
  Path temporary() {
    return temporary;
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
    try (Stream<Path> files = Files.walk(temporary)) {
      files.sorted(Comparator.reverseOrder()).map(Path::toFile).forEach(File::delete);
    } catch (IOException e) {
      throw new UncheckedIOException(temporary + " cannot be removed", e);
    }
  }
}
