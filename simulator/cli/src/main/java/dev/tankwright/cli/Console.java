package dev.tankwright.cli;

import dev.tankwright.report.results.EventsSeen;
import dev.tankwright.report.run.ConsoleSummary;
import dev.tankwright.scenario.run.RunResult;
import java.io.PrintWriter;
import java.util.List;
import picocli.CommandLine;

/** The console output of a run, during and after it. Colour and progress are for terminals only. */
final class Console {
  private final PrintWriter out;
  private final PrintWriter err;
  private final boolean quiet;
  private final boolean terminal;
  private final Progress progress;

  Console(CommandLine line, boolean quiet) {
    out = line.getOut();
    err = line.getErr();
    this.quiet = quiet;
    terminal = Terminal.isPresent();
    progress = new Progress(terminal && !quiet ? err : null);
  }

  Progress progress() {
    return progress;
  }

  /** Prints a remark beside the results, unless it is empty or output is quiet. */
  void remark(String text) {
    if (!quiet && !text.isEmpty()) {
      err.println("tankwright: " + text);
      err.flush();
    }
  }

  /** Shows the verdicts; when quiet, only those of a run in which a requirement did not hold. */
  void show(RunResult run, EventsSeen seen, List<String> notDone) {
    progress.clear();
    if (!quiet || !run.allHeld()) {
      boolean colour = terminal && System.getenv("NO_COLOR") == null;
      out.println(ConsoleSummary.of(run, seen, colour));
    }
    for (String entry : notDone) {
      err.println(run.about().file() + ": never done, the run ended earlier: " + entry);
    }
    if (!seen.complete()) {
      err.println("tankwright: events not delivered: " + seen.failure());
    }
    out.flush();
    err.flush();
  }
}
