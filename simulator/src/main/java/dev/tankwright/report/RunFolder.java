package dev.tankwright.report;

import dev.tankwright.scenario.RunResult;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/**
 * The files one run leaves in a directory. Each is written beside its place and moved there in one
 * step, so that a reader sees an old file or a whole new one. Not to be used by two threads on one
 * directory.
 */
public final class RunFolder {
  /** The page for people, see {@link HtmlReport}. */
  public static final String REPORT = "report.html";

  /** The received events, one JSON document per line in the order of their arrival. */
  public static final String EVENTS = "events.ndjson";

  /** The cycle record of the last cycle that ended; absent when none did. */
  public static final String RECORD = "record.json";

  /** The sampled signals, see {@link TraceCsv}. */
  public static final String TRACE = "trace.csv";

  /** The verdicts for a build server, see {@link JunitXml}. */
  public static final String JUNIT = "junit.xml";

  private final Path directory;

  /** The folder at that path; nothing is touched yet. */
  public RunFolder(Path directory) {
    this.directory = directory;
  }

  /**
   * Writes every file of a run, and makes the directory where it is missing. A record left by an
   * earlier run is removed when this run has none.
   *
   * @param events the received events' payloads, in the order of their arrival
   * @throws UnwritableException when the directory cannot be made or a file cannot be written
   */
  public void write(RunResult run, EventsSeen seen, List<byte[]> events) {
    OutputFolder folder = new OutputFolder(directory);
    folder.make();
    folder.place(REPORT, out -> out.write(HtmlReport.render(run, seen)));
    folder.place(JUNIT, out -> out.write(JunitXml.of(List.of(run))));
    folder.place(TRACE, out -> TraceCsv.write(run.trace(), out));
    if (run.recordJson().isEmpty()) {
      remove(RECORD);
    } else {
      folder.place(RECORD, out -> out.write(run.recordJson().getBytes(StandardCharsets.UTF_8)));
    }
    folder.place(EVENTS, out -> EventLines.write(events, out));
  }

  private void remove(String name) {
    Path target = directory.resolve(name);
    try {
      Files.deleteIfExists(target);
    } catch (IOException e) {
      throw new UnwritableException(target + " of an earlier run cannot be removed (" + e + ")", e);
    }
  }
}
