package dev.tankwright.report.campaign;

import dev.tankwright.campaign.CaseOutcome;
import dev.tankwright.campaign.CaseResult;
import dev.tankwright.campaign.CellSummary;
import dev.tankwright.report.page.Html;
import dev.tankwright.report.page.Page;
import dev.tankwright.report.page.Resource;
import dev.tankwright.report.results.CampaignHeadline;
import dev.tankwright.report.results.CampaignResults;
import dev.tankwright.report.summary.CampaignTables;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * A campaign as one HTML page that needs nothing else and fetches nothing: overview, matrix, an
 * account of every cell, the worst cases with traces, requirements, what was run, cautions. Single
 * cases are not on it, so that it stays small whatever their number. The same campaign gives the
 * same bytes.
 */
final class CampaignPage {
  private CampaignPage() {}

  /**
   * The page, UTF-8.
   *
   * @param worst the worst cases with traces; empty when they were not run again
   */
  static byte[] render(CampaignResults results, List<WorstCase> worst) {
    return new Page("campaign.html")
        .title(CampaignHeadline.headline(results) + ": " + results.about().title())
        .icon(results.outcome())
        .style("palette.css", "report.css", "plots.css", "pages.css", "campaign.css")
        .script("matrix.js")
        .put("shapes", Resource.own(List.of("shapes.html", "marks.html", "spares.html")))
        .put("head", CampaignHead.of(results))
        .put("attention", CampaignHead.attention(results))
        .put("legend", HeatMap.legend())
        .put("matrix", HeatMap.of(results))
        .put("cells", cells(results, worst))
        .put("worst", worst(results, worst))
        .put("requirements", CampaignTables.requirements(results))
        .put("inputs", CampaignTables.inputs(results))
        .render();
  }

  private static String cells(CampaignResults results, List<WorstCase> worst) {
    Map<Integer, CaseResult> byNumber =
        results.result().cases().stream()
            .collect(Collectors.toMap(CaseResult::number, Function.identity()));
    Html html = new Html();
    for (CellSummary cell : results.cells()) {
      boolean traced = worst.stream().anyMatch(w -> w.cell().worstCase() == cell.worstCase());
      CellSection.write(html, results, cell, byNumber.get(cell.worstCase()), traced);
    }
    return html.toString();
  }

  private static String worst(CampaignResults results, List<WorstCase> worst) {
    if (worst.isEmpty()) {
      boolean any = results.count(CaseOutcome.HELD) + results.count(CaseOutcome.FAILED) > 0;
      return any
          ? "<p>No case has been run again for its trace. <code>tankwright report FOLDER --campaign"
              + " FILE</code> runs the worst cases again.</p>\n"
          : "<p>No case was exercised.</p>\n";
    }
    Html html = new Html().raw(TracePlot.legend());
    worst.forEach(each -> WorstSection.write(html, results, each, each.equals(worst.get(0))));
    return html.toString();
  }
}
