package dev.tankwright.report;

import dev.tankwright.scenario.RunResult;

/** One run in a terminal. */
public final class ConsoleSummary {
  private ConsoleSummary() {}

  /** The whole text, every line ended by a line feed. */
  public static String of(RunResult run, EventsSeen seen, boolean colour) {
    return run.about().title() + " " + seen.sent() + colour + "\n";
  }
}
