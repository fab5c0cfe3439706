package dev.tankwright.report.files;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;

/**
 * A directory that files are put into. Each is written beside its place and moved there in one
 * step, so that a reader sees an old file or a whole new one.
 */
public final class OutputFolder {
  private final Path directory;

  /** The folder at that path; nothing is touched yet. */
  public OutputFolder(Path directory) {
    this.directory = directory;
  }

  /**
   * Makes the directory where it is missing.
   *
   * @throws UnwritableException when it cannot be made
   */
  public void make() {
    if (Files.exists(directory) && !Files.isDirectory(directory)) {
      throw new UnwritableException(
          directory + " is a file; name a directory for the files",
          new IOException("not a directory"));
    }
    try {
      Files.createDirectories(directory);
    } catch (IOException e) {
      throw new UnwritableException(
          "The directory " + directory + " cannot be created (" + e + "); name one that can", e);
    }
  }

  /**
   * Writes one file.
   *
   * @throws UnwritableException when it cannot be written
   */
  public void place(String name, Content content) {
    Path target = directory.resolve(name);
    Path part = directory.resolve("." + name + ".part");
    try {
      try (OutputStream out = new BufferedOutputStream(Files.newOutputStream(part), 1 << 16)) {
        content.writeTo(out);
      }
      Files.move(part, target, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
    } catch (IOException e) {
      discard(part, e);
      throw new UnwritableException(target + " cannot be written (" + e + ")", e);
    }
  }

  private static void discard(Path part, IOException failure) {
    try {
      Files.deleteIfExists(part);
    } catch (IOException e) {
      failure.addSuppressed(e);
    }
  }

  /** What goes into one file. */
  @FunctionalInterface
  public interface Content {
    void writeTo(OutputStream out) throws IOException;
  }
}
