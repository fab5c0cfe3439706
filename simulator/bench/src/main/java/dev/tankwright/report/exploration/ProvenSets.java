package dev.tankwright.report.exploration;

import dev.tankwright.explore.SetResult;
import dev.tankwright.report.files.UnwritableException;
import java.io.Closeable;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.channels.Channels;
import java.nio.channels.FileChannel;
import java.nio.channels.OverlappingFileLockException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/**
 * A file of the sets that were explored to their end without a broken rule: comma-separated values
 * by RFC 4180 with a line of headings. A proof can so be put together of many runs. Each set is
 * written as soon as it is proven; what a run that was killed has left of a line is cut off. The
 * file belongs to one run at a time. One thread.
 */
public final class ProvenSets implements Closeable {
  private final Path file;
  private final FileChannel channel;
  private final String fingerprint;
  private final Map<String, SetResult> proven = new LinkedHashMap<>();

  private ProvenSets(Path file, FileChannel channel, String fingerprint) {
    this.file = file;
    this.channel = channel;
    this.fingerprint = fingerprint;
  }

  /**
   * Opens a file; makes it where there is none.
   *
   * @param fingerprint of what is explored: only sets with the same one are known
   * @throws IllegalArgumentException with file and line, when it holds something else
   * @throws UnwritableException when it cannot be read or written, or is in use
   */
  public static ProvenSets open(Path file, String fingerprint) {
    try {
      FileChannel channel =
          FileChannel.open(
              file, StandardOpenOption.READ, StandardOpenOption.WRITE, StandardOpenOption.CREATE);
      ProvenSets sets = new ProvenSets(file, channel, fingerprint);
      try {
        sets.lock();
        sets.read();
        return sets;
      } catch (IOException | RuntimeException e) {
        channel.close();
        throw e;
      }
    } catch (IOException e) {
      throw new UnwritableException(
          file + " cannot be used (" + e + "); name a file that can be written", e);
    }
  }

  private void lock() throws IOException {
    try {
      if (channel.tryLock() != null) {
        return;
      }
    } catch (OverlappingFileLockException e) {
      // In use within this program: the same thing to say.
    }
    throw new IOException("another exploration is using it");
  }

  private void read() throws IOException {
    String all =
        new String(Channels.newInputStream(channel).readAllBytes(), StandardCharsets.UTF_8);
    // Before anything is written: what is not ours is not touched.
    if (!ProvenSetLines.isBeginning(all)) {
      throw new IllegalArgumentException(
          file
              + ":1: this is not a file of proven sets; the headings are "
              + ProvenSetLines.HEADINGS);
    }
    String whole = all.substring(0, all.lastIndexOf('\n') + 1);
    try {
      proven.putAll(ProvenSetLines.read(whole, fingerprint));
    } catch (IllegalArgumentException e) {
      throw new IllegalArgumentException(file + ":" + e.getMessage(), e);
    }
    long length = whole.getBytes(StandardCharsets.UTF_8).length;
    channel.truncate(length);
    channel.position(length);
    if (length == 0) {
      write(ProvenSetLines.headings());
    }
  }

  /**
   * A set that was proven before.
   *
   * @param name the set in words
   */
  public Optional<SetResult> find(String name) {
    return Optional.ofNullable(proven.get(name));
  }

  /**
   * Puts a set down when it is proven, and does nothing when it is not.
   *
   * @param seconds how long it took
   * @throws UnwritableException when the file cannot be written
   */
  public void add(SetResult result, long seconds) {
    if (!result.complete() || !result.violations().isEmpty()) {
      return;
    }
    proven.put(result.faulty(), result);
    try {
      write(ProvenSetLines.line(result, seconds, fingerprint));
    } catch (IOException e) {
      throw new UnwritableException(file + " cannot be written (" + e + ")", e);
    }
  }

  private void write(String line) throws IOException {
    ByteBuffer bytes = ByteBuffer.wrap(line.getBytes(StandardCharsets.UTF_8));
    while (bytes.hasRemaining()) {
      channel.write(bytes);
    }
    channel.force(false);
  }

  @Override
  public void close() {
    try {
      channel.close();
    } catch (IOException e) {
      throw new UncheckedIOException(file + " cannot be closed", e);
    }
  }
}
