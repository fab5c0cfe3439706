package dev.tankwright.cli;

import java.io.File;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.stream.Stream;

/**
 * A temporary folder in which SQLite's library is unpacked; its own place for that is left behind
 * when the process ends by a halt, as it does here.
 */
final class NativeFolder implements AutoCloseable {
  private static final String LIBRARY_FOLDER = "org.sqlite.tmpdir";

  private final Path folder;

  private NativeFolder(Path folder) {
    this.folder = folder;
  }

  /** Makes the folder, for the first database that is opened after this. */
  static NativeFolder open() {
    try {
      Path folder = Files.createTempDirectory("tankwright");
      if (System.getProperty(LIBRARY_FOLDER) == null) {
        System.setProperty(LIBRARY_FOLDER, folder.toString());
      }
      return new NativeFolder(folder);
    } catch (IOException e) {
      throw new UncheckedIOException("cannot create a temporary folder", e);
    }
  }

  /** Where other temporary files may be. */
  Path path() {
    return folder;
  }

  /** Removes the folder with all that is in it. */
  @Override
  public void close() {
    try (Stream<Path> files = Files.walk(folder)) {
      files.sorted(Comparator.reverseOrder()).map(Path::toFile).forEach(File::delete);
    } catch (IOException e) {
      throw new UncheckedIOException(folder + " cannot be removed", e);
    }
  }
}
