package dev.tankwright.campaign;

import java.io.Closeable;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Where a campaign keeps its results while it runs; not thread-safe. */
public final class ResultStore implements Closeable {
  private final Path folder;
  private final About about;
  private final ResultLog log;
  private final List<String> remarks = new ArrayList<>();

  private ResultStore(Path folder, About about, ResultLog log) {
    this.folder = folder;
    this.about = about;
    this.log = log;
  }

  /** A store that keeps nothing. */
  public static ResultStore none() {
    return new ResultStore(null, null, null);
  }

  /**
   * Takes hold of a folder.
   *
   * @throws ResultFileException when another process holds it
   * @throws IOException when it cannot be made or written
   */
  public static ResultStore open(Path folder, About about) throws ResultFileException, IOException {
    return new ResultStore(folder, about, ResultLog.hold(folder, about));
  }

  /**
   * Begins to keep results.
   *
   * @param resume whether to go on with what is there
   * @return what was there
   * @throws ResultFileException when there are results and it is not to go on, or they are of
   *     another campaign, version or share
   */
  public List<CaseResult> begin(boolean resume) throws ResultFileException, IOException {
    if (log == null) {
      return List.of();
    }
    Optional<ResultFile> found = ResultFile.read(folder);
    if (found.isPresent() && !resume) {
      throw full(found.get(), "resume them with --resume, or name another folder");
    }
    if (found.isPresent()) {
      check(found.get());
    }
    List<CaseResult> done = found.map(ResultFile::cases).orElse(List.of());
    log.begin(done);
    return done;
  }

  /**
   * Makes sure that there are no results yet.
   *
   * @throws ResultFileException when there are
   */
  public void requireEmpty() throws ResultFileException {
    Optional<ResultFile> found = ResultFile.read(folder);
    if (found.isPresent()) {
      throw full(found.get(), "name another folder");
    }
  }

  private ResultFileException full(ResultFile found, String way) {
    return new ResultFileException(
        folder + " holds " + found.cases().size() + " results already; " + way);
  }

  private void check(ResultFile found) throws ResultFileException {
    if (!found.about().equals(about)) {
      throw new ResultFileException(
          folder
              + " cannot be resumed: "
              + Difference.of(found.about(), about)
              + "; name another folder");
    }
    Path file = folder.resolve(ResultFile.NAME);
    List<Integer> lines = found.discarded();
    if (found.cut()) {
      remarks.add(
          file
              + ": line "
              + lines.get(lines.size() - 1)
              + " is incomplete and is discarded; its case is run again");
      lines = lines.subList(0, lines.size() - 1);
    }
    if (!lines.isEmpty()) {
      remarks.add(
          file
              + ": "
              + (lines.size() == 1 ? "line " : lines.size() + " lines, the first of them ")
              + lines.get(0)
              + ", do not match their checksum and are discarded; their cases are run again");
    }
    if (found.doubled() > 0) {
      remarks.add(file + ": " + found.doubled() + " lines repeat earlier lines");
    }
  }

  /** What a person should know of what was there; one sentence each. */
  public List<String> remarks() {
    return List.copyOf(remarks);
  }

  /** Keeps one result. */
  public void append(CaseResult result) throws IOException {
    if (log != null) {
      log.append(result);
    }
  }

  /** Keeps all results in their order. */
  public void end(CampaignResult result) throws IOException {
    if (log != null) {
      log.end(result);
    }
  }

  @Override
  public void close() throws IOException {
    if (log != null) {
      log.close();
    }
  }
}
