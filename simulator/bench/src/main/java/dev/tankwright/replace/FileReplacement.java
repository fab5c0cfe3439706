package dev.tankwright.replace;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.channels.Channels;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;

/**
 * Puts a whole file into its place: it is written beside it, under the same name with a point
 * before and {@code .part} behind, and moved there in one step. What cannot be finished leaves the
 * file as it was. Two threads must not replace the same file at once.
 */
public final class FileReplacement {
  private static final int BUFFER = 1 << 16;

  /** What goes into a file. */
  @FunctionalInterface
  public interface Content {
    /** Writes it; closes nothing. */
    void writeTo(OutputStream out) throws IOException;
  }

  private FileReplacement() {}

  /**
   * Replaces a file, or makes it.
   *
   * @throws IOException when it cannot be written or moved
   */
  public static void replace(Path target, Content content) throws IOException {
    replace(target, content, false);
  }

  /**
   * Replaces a file, or makes it, with its content on the disk before it comes into its place: for
   * the case that the machine loses its power.
   *
   * @throws IOException when it cannot be written or moved
   */
  public static void replaceForced(Path target, Content content) throws IOException {
    replace(target, content, true);
  }

  private static void replace(Path target, Content content, boolean forced) throws IOException {
    Path part = target.resolveSibling("." + target.getFileName() + ".part");
    try {
      write(part, content, forced);
      Files.move(part, target, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
    } catch (IOException e) {
      discard(part, e);
      throw e;
    }
  }

  private static void write(Path part, Content content, boolean forced) throws IOException {
    try (FileChannel channel =
            FileChannel.open(
                part,
                StandardOpenOption.CREATE,
                StandardOpenOption.TRUNCATE_EXISTING,
                StandardOpenOption.WRITE);
        OutputStream out = new BufferedOutputStream(Channels.newOutputStream(channel), BUFFER)) {
      content.writeTo(out);
      out.flush();
      if (forced) {
        channel.force(true);
      }
    }
  }

  private static void discard(Path part, IOException failure) {
    try {
      Files.deleteIfExists(part);
    } catch (IOException e) {
      failure.addSuppressed(e);
    }
  }
}
