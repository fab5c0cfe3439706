package dev.tankwright.scenario.yaml;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;

/** The bytes of a file that a person named, or what is wrong with it. */
public final class FileBytes {
  /** The largest file that is read, bytes. */
  public static final int LARGEST_BYTES = 1 << 20;

  private FileBytes() {}

  /**
   * Reads a whole file.
   *
   * @param noun what kind of file it should be, for messages
   * @throws ScenarioException when it is not there, is too large or cannot be read
   */
  public static byte[] read(Path path, String noun) throws ScenarioException {
    Problems problems = new Problems(path.toString());
    if (Files.isDirectory(path)) {
      throw problems.stop(Place.START, "this is a directory; name a " + noun + " file in it");
    }
    if (!Files.exists(path)) {
      throw problems.stop(Place.START, "there is no such file; check its name and folder");
    }
    if (!Files.isRegularFile(path)) {
      throw problems.stop(Place.START, "this is no ordinary file; name a " + noun + " file");
    }
    try (InputStream in = Files.newInputStream(path)) {
      long size = Files.size(path);
      if (size > LARGEST_BYTES) {
        throw problems.stop(Place.START, tooLarge(size, noun));
      }
      // One byte more than allowed, so that a file that grows meanwhile is still found too large.
      return in.readNBytes(LARGEST_BYTES + 1);
    } catch (IOException e) {
      throw problems.stop(
          Place.START, "the file cannot be read (" + e.getMessage() + "); check its permissions");
    }
  }

  public static String tooLarge(long size, String noun) {
    return "the file has " + size + " bytes; a " + noun + " has at most " + LARGEST_BYTES;
  }
}
