package dev.tankwright.report.files;

import dev.tankwright.replace.FileReplacement;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

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
  public void place(String name, FileReplacement.Content content) {
    Path target = directory.resolve(name);
    try {
      FileReplacement.replace(target, content);
    } catch (IOException e) {
      throw new UnwritableException(target + " cannot be written (" + e + ")", e);
    }
  }
}
