package dev.tankwright.report;

import dev.tankwright.campaign.CaseOutcome;
import dev.tankwright.campaign.CaseResult;
import dev.tankwright.campaign.CellSummary;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
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
  private static final List<String> STYLES =
      List.of("palette.css", "report.css", "plots.css", "pages.css", "campaign.css");

  private CampaignPage() {}

  /**
   * The page, UTF-8.
   *
   * @param worst the worst cases with traces; empty when they were not run again
   */
  static byte[] render(CampaignResults results, List<WorstCase> worst) {
    String style = Resource.own(STYLES);
    String script = Resource.own("matrix.js");
    Map<String, String> fillings = new HashMap<>();
    fillings.put("policy", Policy.of(new String[] {script}, new String[] {style}));
    fillings.put("style", style);
    fillings.put("script", script);
    fillings.put(
        "title",
        new Html()
            .text(CampaignWords.headline(results) + ": " + results.about().title())
            .toString());
    fillings.put("icon", Icon.of(results.outcome()));
    fillings.put("shapes", Resource.own("shapes.html") + Resource.own("spares.html"));
    fillings.put("head", CampaignHead.of(results));
    fillings.put("attention", CampaignHead.attention(results));
    fillings.put("legend", HeatMap.legend());
    fillings.put("matrix", HeatMap.of(results));
    fillings.put("cells", cells(results, worst));
    fillings.put("worst", worst(results, worst));
    fillings.put("requirements", CampaignTables.requirements(results));
    fillings.put("inputs", CampaignTables.inputs(results));
    fillings.put("cautions", Resource.own("cautions.html"));
    String page = Template.fill(Resource.own("campaign.html"), fillings);
    return page.getBytes(StandardCharsets.UTF_8);
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
          ? "<p>No case was run again for its trace. <code>tankwright report FOLDER --campaign"
              + " FILE</code> does it.</p>\n"
          : "<p>No case shows anything.</p>\n";
    }
    Html html = new Html().raw(TracePlot.legend());
    worst.forEach(each -> WorstSection.write(html, results, each, each.equals(worst.get(0))));
    return html.toString();
  }
}
