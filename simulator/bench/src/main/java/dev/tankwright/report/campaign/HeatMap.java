package dev.tankwright.report.campaign;

import dev.tankwright.campaign.Cell;
import dev.tankwright.campaign.CellSummary;
import dev.tankwright.controller.board.Phase;
import dev.tankwright.report.page.Html;
import dev.tankwright.report.results.CampaignResults;
import dev.tankwright.report.text.CaseWords;
import dev.tankwright.report.text.Words;
import java.util.Optional;

/**
 * A campaign's matrix of faults and phases. Every cell leads to its account below; colour, sign and
 * text say the same thing.
 */
final class HeatMap {
  private final Html html = new Html();
  private final CampaignResults results;

  private HeatMap(CampaignResults results) {
    this.results = results;
  }

  static String of(CampaignResults results) {
    HeatMap map = new HeatMap(results);
    map.table();
    return map.html.toString();
  }

  private void table() {
    html.raw("<table class=\"heat\" id=\"heat\">\n<thead><tr><th scope=\"col\">Fault</th>");
    for (Phase phase : results.about().phases()) {
      html.column("", Words.of(phase));
    }
    html.raw("</tr></thead>\n<tbody>\n");
    for (String fault : results.about().faults()) {
      html.raw("<tr><th scope=\"row\">").text(fault).raw("</th>");
      for (Phase phase : results.about().phases()) {
        Optional<CellSummary> cell = results.result().cell(new Cell(fault, phase));
        cell.ifPresentOrElse(this::cell, () -> html.raw("<td class=\"none\"></td>"));
      }
      html.raw("</tr>\n");
    }
    html.raw("</tbody>\n</table>\n");
  }

  private void cell(CellSummary cell) {
    SpareMargin spare = SpareMargin.of(cell);
    html.raw("<td><a class=\"spare-").raw(spare.key()).raw("\" href=\"#").raw(id(results, cell));
    html.raw("\" title=\"").text(title(cell, spare)).raw("\">");
    sign(html, spare).raw("<span class=\"unseen\">").text(spare.word() + ", reaction ");
    html.raw("</span><span class=\"reaction\">").text(reaction(cell)).raw("</span>");
    html.raw("<span class=\"unseen\">, least margin </span><span class=\"least\">");
    html.text(CaseWords.margin(cell.leastMargin())).raw("</span></a></td>");
  }

  /** The drawn sign of a step. */
  static Html sign(Html html, SpareMargin spare) {
    return html.shape(
        switch (spare) {
          case FAILED -> "failed";
          case EMPTY -> "open";
          case UNMEASURED -> "held";
          case AMPLE, FAIR, CLOSE, TIGHT -> spare.key();
        });
  }

  private static String title(CellSummary cell, SpareMargin spare) {
    return cell.cell() + ": " + spare.word() + "; " + CaseWords.story(cell);
  }

  /** The median of the reaction, and how many were detected where not all were. */
  private static String reaction(CellSummary cell) {
    if (cell.reached() == 0) {
      return "not reached";
    }
    if (cell.detected() == 0) {
      return "no alarm";
    }
    String median = CaseWords.millis(cell.reaction().median());
    return cell.detected() == cell.reached()
        ? median
        : median + " in " + cell.detected() + "/" + cell.reached();
  }

  /** Id of a cell's account on the page. */
  static String id(CampaignResults results, CellSummary cell) {
    return "c" + results.cells().indexOf(cell);
  }

  /** What colours and signs mean. */
  static String legend() {
    Html html = new Html();
    html.raw("<ul class=\"signs spares\">\n");
    for (SpareMargin spare : SpareMargin.values()) {
      html.raw("<li><span class=\"swatch-cell spare-").raw(spare.key()).raw("\">");
      sign(html, spare).raw("</span><span><strong>").text(spare.word()).raw("</strong> ");
      html.text(spare.meaning()).raw("</span></li>\n");
    }
    return html.raw("</ul>\n").toString();
  }
}
