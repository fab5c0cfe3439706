package dev.tankwright.report.run;

import dev.tankwright.report.files.EventLines;
import dev.tankwright.report.files.OutputFolder;
import dev.tankwright.report.files.UnwritableException;
import dev.tankwright.report.junit.JunitXml;
import dev.tankwright.report.results.EventsSeen;
import dev.tankwright.report.results.ResultJson;
import dev.tankwright.report.results.RunFiles;
import dev.tankwright.report.results.RunResults;
import dev.tankwright.report.results.SavedRun;
import dev.tankwright.report.summary.SummaryFolder;
import dev.tankwright.report.trace.TraceCsv;
import dev.tankwright.report.trace.TraceVcd;
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
    folder.place(RunFiles.REPORT, out -> out.write(HtmlReport.render(run, seen)));
    folder.place(RunFiles.RESULT, out -> out.write(ResultJson.of(run, seen)));
    folder.place(RunFiles.JUNIT, out -> out.write(JunitXml.of(run, label)));
    folder.place(RunFiles.TRACE, out -> TraceCsv.write(run.trace(), out));
    folder.place(RunFiles.DUMP, out -> TraceVcd.write(run, out));
    if (run.recordJson().isEmpty()) {
      remove(RunFiles.RECORD);
    } else {
      folder.place(
          RunFiles.RECORD, out -> out.write(run.recordJson().getBytes(StandardCharsets.UTF_8)));
    }
    folder.place(RunFiles.EVENTS, out -> EventLines.write(events, out));
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
