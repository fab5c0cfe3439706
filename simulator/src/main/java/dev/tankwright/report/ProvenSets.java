package dev.tankwright.report;

import dev.tankwright.explore.SetResult;
import java.io.Closeable;
import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.channels.Channels;
import java.nio.channels.FileChannel;
import java.nio.channels.OverlappingFileLockException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;

/**
 * A file of the sets that were explored to their end without a broken rule: comma-separated values
 * by RFC 4180 with a line of headings. A proof can so be put together of many runs. Each set is
 * written as soon as it is proven; what a run that was killed has left of a line is cut off. The
 * file belongs to one run at a time. One thread.
 */
public final class ProvenSets implements Closeable {
  private static final String[] HEADINGS = {
    "set", "states", "transitions", "depth", "bytes", "seconds", "fingerprint"
  };
  private static final CSVFormat FORMAT =
      CSVFormat.RFC4180.builder().setHeader(HEADINGS).setSkipHeaderRecord(true).get();

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
    byte[] all = Channels.newInputStream(channel).readAllBytes();
    int whole = all.length;
    while (whole > 0 && all[whole - 1] != '\n') {
      whole--;
    }
    channel.truncate(whole);
    channel.position(whole);
    if (whole == 0) {
      write((Object[]) HEADINGS);
    } else {
      parse(new String(all, 0, whole, StandardCharsets.UTF_8));
    }
  }

  private void parse(String text) throws IOException {
    // Lines may have lost their carriage returns on the way through a version control.
    if (!text.lines().findFirst().orElse("").equals(String.join(",", HEADINGS))) {
      throw new IllegalArgumentException(
          file + ":1: these are no proven sets; the headings are " + String.join(",", HEADINGS));
    }
    for (CSVRecord line : FORMAT.parse(new StringReader(text))) {
      try {
        if (line.get("fingerprint").equals(fingerprint)) {
          SetResult result = result(line);
          proven.put(result.faulty(), result);
        }
      } catch (IllegalArgumentException e) {
        throw new IllegalArgumentException(
            file + ":" + (line.getRecordNumber() + 1) + ": no proven set (" + e.getMessage() + ")",
            e);
      }
    }
  }

  private static SetResult result(CSVRecord line) {
    return new SetResult(
        line.get("set"),
        Integer.parseInt(line.get("states")),
        Long.parseLong(line.get("transitions")),
        Integer.parseInt(line.get("depth")),
        Long.parseLong(line.get("bytes")),
        true,
        List.of(),
        "");
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
      write(
          result.faulty(),
          result.states(),
          result.transitions(),
          result.depth(),
          result.bytes(),
          seconds,
          fingerprint);
    } catch (IOException e) {
      throw new UnwritableException(file + " cannot be written (" + e + ")", e);
    }
  }

  private void write(Object... values) throws IOException {
    String line = CSVFormat.RFC4180.format(values) + "\r\n";
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
