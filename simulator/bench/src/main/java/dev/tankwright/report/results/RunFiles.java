package dev.tankwright.report.results;

import java.util.List;

/** The names of the files that a run leaves in its folder. */
public final class RunFiles {
  /** The page for people, see {@code HtmlReport}. */
  public static final String REPORT = "report.html";

  /** The received events, one JSON document per line in the order of their arrival. */
  public static final String EVENTS = "events.ndjson";

  /** The cycle record of the last cycle that ended; absent when none did. */
  public static final String RECORD = "record.json";

  /** The sampled signals, see {@code TraceCsv}. */
  public static final String TRACE = "trace.csv";

  /** The verdicts for a build server, see {@code JunitXml}. */
  public static final String JUNIT = "junit.xml";

  /** The verdicts with their margins, for {@code tankwright report}, see {@code ResultJson}. */
  public static final String RESULT = "result.json";

  /** The sampled signals for waveform viewers, see {@code TraceVcd}. */
  public static final String DUMP = "trace.vcd";

  /** All of them, the summary and the list of checksums apart. */
  public static final List<String> FILES =
      List.of(REPORT, RESULT, JUNIT, TRACE, DUMP, EVENTS, RECORD);

  private RunFiles() {}
}
