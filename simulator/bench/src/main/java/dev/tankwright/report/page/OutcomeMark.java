package dev.tankwright.report.page;

import dev.tankwright.report.text.Words;
import dev.tankwright.scenario.Verdict;

/** How an outcome is shown on a page: its name in the style sheets, its mark and its word. */
public final class OutcomeMark {
  private OutcomeMark() {}

  /** Name of an outcome in the style sheet. */
  public static String key(Verdict.Outcome outcome) {
    return switch (outcome) {
      case HELD -> "held";
      case FAILED -> "failed";
      case NOT_EXERCISED -> "open";
    };
  }

  /** The mark and the word of an outcome, for a cell of a table. */
  public static Html cell(Html html, Verdict.Outcome outcome) {
    String key = key(outcome);
    html.raw("<td class=\"outcome is-").raw(key).raw("\">").shape(key).raw("<span class=\"word\">");
    return html.text(Words.outcome(outcome)).raw("</span></td>");
  }
}
