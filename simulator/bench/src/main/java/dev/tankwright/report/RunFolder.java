package dev.tankwright.report;

import dev.tankwright.scenario.run.RunResult;
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

  /** The verdicts with their margins, for {@code tankwright report}, see {@link ResultJson}. */
  public static final String RESULT = "result.json";

  /** The sampled signals for waveform viewers, see {@link TraceVcd}. */
  public static final String DUMP = "trace.vcd";

  /** The files that a run leaves, the summary and the list of checksums apart. */
  static final List<String> FILES = List.of(REPORT, RESULT, JUNIT, TRACE, DUMP, EVENTS, RECORD);

  private final Path directory;
  private final String label;

  /** The folder at that path; nothing is touched yet. */
  public RunFolder(Path directory) {
    this(directory, "");
  }

  /**
   * The folder at that path, for one of several scenarios.
   *
   * @param label what tells the scenario from the others in the eyes of a build server, with
   *     slashes; empty for the name of its file
   */
  public RunFolder(Path directory, String label) {
    this.directory = directory;
    this.label = label;
  }

  /**
   * Writes every file of a run, and makes the directory where it is missing. What an earlier run
   * left and this one has not is removed: its record, and what had changed against another.
   *
   * @param events the received events' payloads, in the order of their arrival
   * @throws UnwritableException when the directory cannot be made or a file cannot be written
   */
  public void write(RunResult run, EventsSeen seen, List<byte[]> events) {
    OutputFolder folder = new OutputFolder(directory);
    folder.make();
    folder.place(REPORT, out -> out.write(HtmlReport.render(run, seen)));
    folder.place(RESULT, out -> out.write(ResultJson.of(run, seen)));
    folder.place(JUNIT, out -> out.write(JunitXml.of(run, label)));
    folder.place(TRACE, out -> TraceCsv.write(run.trace(), out));
    folder.place(DUMP, out -> TraceVcd.write(run, out));
    if (run.recordJson().isEmpty()) {
      remove(RECORD);
    } else {
      folder.place(RECORD, out -> out.write(run.recordJson().getBytes(StandardCharsets.UTF_8)));
    }
    folder.place(EVENTS, out -> EventLines.write(events, out));
    remove(SummaryFolder.CHANGES);
    SummaryFolder.write(new RunResults(directory, List.of(SavedRun.of("", run, seen))));
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
