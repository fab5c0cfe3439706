package dev.tankwright.campaign;

import dev.tankwright.replace.FileReplacement;
import java.io.Closeable;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.List;

/**
 * The result file of a campaign that is being run: lines are appended and never changed, each with
 * its checksum, so that whatever ends the process leaves every line before the last whole. After a
 * group of lines the file is forced to the disk, for the case that the machine loses its power. One
 * process at a time may hold a folder; not thread-safe.
 */
public final class ResultLog implements Closeable {
  private static final String LOCK = ".lock";
  private static final int GROUP = 256;

  private final Path folder;
  private final About about;
  private final FileChannel guard;
  private FileChannel channel;
  private int unforced;

  private ResultLog(Path folder, About about, FileChannel guard) {
    this.folder = folder;
    this.about = about;
    this.guard = guard;
  }

  /**
   * Takes hold of a folder, which is made where it is missing.
   *
   * @throws ResultFileException when another process holds it
   * @throws IOException when it cannot be made or written
   */
  public static ResultLog hold(Path folder, About about) throws ResultFileException, IOException {
    Files.createDirectories(folder);
    FileChannel guard =
        FileChannel.open(folder.resolve(LOCK), StandardOpenOption.CREATE, StandardOpenOption.WRITE);
    if (!isLocked(guard)) {
      guard.close();
      throw new ResultFileException(
          folder + " is being written by another run; wait until it ends, or name another folder");
    }
    return new ResultLog(folder, about, guard);
  }

  private static boolean isLocked(FileChannel guard) throws IOException {
    try {
      FileLock lock = guard.tryLock();
      return lock != null;
    } catch (OverlappingFileLockException e) {
      return false;
    }
  }

  /** Writes a whole file beside its place and moves it there in one step; forced to the disk. */
  private void replace(List<CaseResult> cases) throws IOException {
    FileReplacement.replaceForced(
        folder.resolve(ResultFile.NAME),
        out -> {
          out.write(HeadLines.of(about).getBytes(StandardCharsets.UTF_8));
          for (CaseResult result : cases) {
            out.write(
                ResultLine.of(CaseLine.fields(result, about)).getBytes(StandardCharsets.UTF_8));
          }
        });
  }

  /**
   * Begins to append, after the results that are there already.
   *
   * @param done what is there already; the file is written anew with exactly these
   */
  public void begin(List<CaseResult> done) throws IOException {
    replace(done);
    channel = FileChannel.open(folder.resolve(ResultFile.NAME), StandardOpenOption.APPEND);
  }

  /** Appends one result. */
  public void append(CaseResult result) throws IOException {
    write(channel, ResultLine.of(CaseLine.fields(result, about)));
    if (++unforced >= GROUP) {
      force();
    }
  }

  /** Forces what was appended to the disk. */
  public void force() throws IOException {
    channel.force(false);
    unforced = 0;
  }

  /** Ends with all results in the order of their numbers: the same bytes for the same results. */
  public void end(CampaignResult result) throws IOException {
    if (channel != null) {
      channel.close();
    }
    replace(result.cases());
  }

  private static void write(FileChannel out, String text) throws IOException {
    ByteBuffer bytes = ByteBuffer.wrap(text.getBytes(StandardCharsets.UTF_8));
    while (bytes.hasRemaining()) {
      out.write(bytes);
    }
  }

  /** Lets go of the folder; results that were appended stay. */
  @Override
  public void close() throws IOException {
    try (guard) {
      if (channel != null && channel.isOpen()) {
        force();
        channel.close();
      }
    }
    // The lock's file stays: taken away, it could be held by one process and made by another.
  }
}
