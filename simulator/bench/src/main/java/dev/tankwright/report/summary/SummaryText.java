package dev.tankwright.report.summary;

import dev.tankwright.report.results.JudgedLine;
import dev.tankwright.report.results.Results;
import dev.tankwright.report.text.Columns;
import dev.tankwright.scenario.Verdict;
import java.util.List;

/** A folder's results in a terminal: what is not as it should be, and one line that sums up. */
public final class SummaryText {
  private static final int WIDTH = 100;

  private SummaryText() {}

  /** The whole text, every line ended by a line feed. */
  public static String of(Results results) {
    StringBuilder out = new StringBuilder();
    for (JudgedLine line : results.lines()) {
      if (line.outcome() != Verdict.Outcome.HELD) {
        String word = line.outcome() == Verdict.Outcome.FAILED ? "FAILED" : "not exercised";
        List<String> lines =
            Columns.wrap(
                Columns.clean(line.group() + ": " + line.name() + ": " + line.detail()),
                WIDTH - 15);
        for (int i = 0; i < lines.size(); i++) {
          Columns.padded(out, i == 0 ? word : "", 15);
          out.append(lines.get(i));
          Columns.endLine(out);
        }
      }
    }
    SummaryParts parts = SummaryParts.of(results);
    out.append(Columns.clean(parts.title())).append(": ").append(parts.headline());
    out.append(parts.rest().isEmpty() ? "" : " (" + parts.rest() + ")").append(".\n");
    return out.append(results.folder().resolve(SummaryFolder.PAGE)).append('\n').toString();
  }
}
