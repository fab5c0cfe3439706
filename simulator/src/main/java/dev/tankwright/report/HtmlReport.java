package dev.tankwright.report;

import dev.tankwright.scenario.RunResult;
import java.nio.charset.StandardCharsets;

/** The page. */
public final class HtmlReport {
  private HtmlReport() {}

  /** The page as UTF-8 bytes. */
  public static byte[] render(RunResult run, EventsSeen seen) {
    return (run.about().title() + seen.sent()).getBytes(StandardCharsets.UTF_8);
  }
}
