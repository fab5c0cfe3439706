package dev.tankwright.cli;

import dev.tankwright.record.BatchResult;
import dev.tankwright.record.CycleText;
import dev.tankwright.record.Finding;
import dev.tankwright.record.FindingKind;
import dev.tankwright.record.RecorderListener;
import java.io.PrintWriter;
import java.util.EnumMap;
import java.util.Map;

/** The console output of a recorder: cycle records as they arrive, findings, and a summary. */
final class RecordConsole implements RecorderListener {
  private final PrintWriter out;
  private final PrintWriter err;
  private final Map<FindingKind, Long> open = new EnumMap<>(FindingKind.class);
  private long fresh;
  private long doubled;
  private long aside;
  private long cycles;
  private boolean listened;
  private String trouble;

  RecordConsole(PrintWriter out, PrintWriter err) {
    this.out = out;
    this.err = err;
  }

  @Override
  public void listening() {
    out.println(listened ? "Listening again." : "Listening; stop with Ctrl-C.");
    listened = true;
  }

  @Override
  public void committed(BatchResult noted) {
    fresh += noted.fresh();
    doubled += noted.doubled();
    cycles += noted.cycles().size();
    aside += noted.aside().size();
    noted.begun().forEach(out::println);
    noted.cycles().forEach(cycle -> out.print(CycleText.closed(cycle)));
    out.flush();
    for (Finding finding : noted.found()) {
      open.merge(finding.kind(), 1L, Long::sum);
      err.println(
          "tankwright: " + finding.device() + ": " + finding.kind() + ": " + finding.text());
    }
    for (Finding gap : noted.closed()) {
      open.merge(FindingKind.GAP, -1L, Long::sum);
      out.println(gap.device() + ": resolved: " + gap.text());
    }
    noted.aside().forEach(sentence -> err.println("tankwright: " + sentence));
  }

  @Override
  public void trouble(String words) {
    trouble = words;
    err.println("tankwright: " + words);
  }

  @Override
  public void recovered() {
    trouble = null;
    out.println("Recording again.");
  }

  /** Prints the summary and returns the exit code. */
  int end() {
    out.printf(
        "%d new events, %d duplicates, %d cycles recorded, %d open gaps, %d broken links,"
            + " %d altered, %d messages set aside.%n",
        fresh,
        doubled,
        cycles,
        Math.max(0, count(FindingKind.GAP)),
        count(FindingKind.BROKEN),
        count(FindingKind.CHANGED),
        aside);
    if (!listened || trouble != null) {
      return ExitCode.ENVIRONMENT;
    }
    boolean wrong = open.values().stream().anyMatch(count -> count > 0);
    return wrong ? ExitCode.FAILED : ExitCode.HELD;
  }

  private long count(FindingKind kind) {
    return open.getOrDefault(kind, 0L);
  }
}
