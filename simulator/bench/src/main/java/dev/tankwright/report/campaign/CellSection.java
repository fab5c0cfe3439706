package dev.tankwright.report.campaign;

import dev.tankwright.campaign.Axis;
import dev.tankwright.campaign.CaseResult;
import dev.tankwright.campaign.CellSummary;
import dev.tankwright.campaign.Margin;
import dev.tankwright.campaign.Setting;
import dev.tankwright.report.page.Html;
import dev.tankwright.report.results.CampaignResults;
import dev.tankwright.report.text.CaseWords;
import dev.tankwright.report.text.Decimal;
import dev.tankwright.report.text.Words;
import dev.tankwright.scenario.Verdict;
import java.util.List;

/** The account of one cell: what all its cases came to, and its worst one. */
final class CellSection {
  private CellSection() {}

  /**
   * Appends the account.
   *
   * @param worst the worst case
   * @param traced whether the page shows that case with its trace
   */
  static void write(
      Html html, CampaignResults results, CellSummary cell, CaseResult worst, boolean traced) {
    SpareMargin spare = SpareMargin.of(cell);
    String id = HeatMap.id(results, cell);
    html.raw("<article class=\"cell\" id=\"").raw(id).raw("\" tabindex=\"-1\"><h3>");
    HeatMap.sign(html.raw("<span class=\"swatch-cell spare-").raw(spare.key()).raw("\">"), spare);
    html.raw("</span>").text(cell.cell().fault()).raw(" <span class=\"in\">in ");
    html.text(Words.of(cell.cell().phase())).raw("</span></h3>\n<dl class=\"facts\">\n");
    html.fact("Outcome", "", outcome(cell));
    html.fact("Cases", "", CaseWords.number(cell.cases()));
    html.fact("Phase reached in", "", CaseWords.number(cell.reached()));
    html.fact("Detected in", "", CaseWords.number(cell.detected()));
    html.fact("Reaction, least / median / most", "", reaction(cell));
    html.fact("First fault raised", "", cell.detected() == 0 ? "none" : CaseWords.faults(cell));
    html.fact("Least margin", "", CaseWords.margin(cell.leastMargin()));
    html.fact("Margin of", "", cell.leastMargin().map(Margin::requirement).orElse("\u2013"));
    html.raw("</dl>\n");
    worst(html, results, worst);
    html.raw("<p class=\"ways\">");
    if (traced) {
      html.raw("<a href=\"#w").raw(worst.number()).raw("\">Its scenario and trace</a> ");
    }
    html.raw("<a href=\"#heat\">Back to the matrix</a></p>\n</article>\n");
  }

  private static String outcome(CellSummary cell) {
    String word = CaseWords.outcome(cell.outcome());
    return cell.failed() == 0 ? word : word + " in " + CaseWords.number(cell.failed());
  }

  private static String reaction(CellSummary cell) {
    return cell.detected() == 0
        ? "none"
        : CaseWords.millis(cell.reaction().least())
            + " / "
            + CaseWords.millis(cell.reaction().median())
            + " / "
            + CaseWords.millis(cell.reaction().most());
  }

  private static void worst(Html html, CampaignResults results, CaseResult worst) {
    html.raw("<p>Case to look at first: <strong>").raw(worst.number()).raw("</strong>, ");
    html.text(CaseWords.outcome(worst.outcome())).raw("; ").text(setting(worst.setting()));
    html.raw(".</p>\n");
    List<String> failed = worst.names(Verdict.Outcome.FAILED, results.about().requirements());
    if (!failed.isEmpty()) {
      html.raw("<p class=\"is-failed\"><span class=\"word\">Failed:</span> ");
      html.text(String.join("; ", failed)).raw("</p>\n");
    }
    replay(html, results, worst.number());
  }

  /** The command that makes a case's scenario file. */
  static void replay(Html html, CampaignResults results, int number) {
    html.raw("<pre class=\"command\"><code>").text(results.about().replayCommand(number));
    html.raw("</code></pre>\n");
  }

  /** Moment, tolerances and seed in words. */
  static String setting(Setting setting) {
    StringBuilder out = new StringBuilder();
    for (Axis axis : Axis.values()) {
      double value = setting.value(axis);
      out.append(out.isEmpty() ? "" : ", ").append(axis.key().replace('-', ' ')).append(' ');
      out.append(
          switch (axis) {
            case MOMENT -> Words.moment(setting.delayMillis()) + " min:s after the phase began";
            case RELAY_DELAY -> Decimal.of(value, 0) + " ms";
            case AMBIENT -> Decimal.of(value, 1) + " \u00B0C";
            case HEATER, MAINS, FILL -> Decimal.of(value * 100, 1) + " %";
            case CONTROL_SENSOR, CUT_OFF_SENSOR ->
                Words.printed(Decimal.of(value * 100, 0)) + "\u00A0% of class B";
          });
    }
    return out.append(", seed ").append(setting.seed()).toString();
  }
}
