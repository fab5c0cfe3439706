package dev.tankwright.report.campaign;

import dev.tankwright.campaign.About;
import dev.tankwright.campaign.CaseOutcome;
import dev.tankwright.campaign.CellSummary;
import dev.tankwright.campaign.RequirementSummary;
import dev.tankwright.report.page.Html;
import dev.tankwright.report.page.OutcomeMark;
import dev.tankwright.report.results.CampaignHeadline;
import dev.tankwright.report.results.CampaignResults;
import dev.tankwright.report.text.CaseWords;
import dev.tankwright.report.text.Words;

/** Top of a campaign's page: the verdict, what was run, and what needs attention. */
final class CampaignHead {
  private CampaignHead() {}

  static String of(CampaignResults results) {
    Html html = new Html();
    String key = OutcomeMark.key(results.outcome());
    html.raw("<div class=\"verdict is-").raw(key).raw("\">\n").shape(key);
    html.raw("<p class=\"headline\">").text(CampaignHeadline.headline(results)).raw("</p>\n");
    String rest = CampaignHeadline.rest(results);
    if (!rest.isEmpty()) {
      html.raw("<p class=\"rest\">").text(rest).raw("</p>\n");
    }
    About about = results.about();
    html.raw("</div>\n<div class=\"about\"><p class=\"kind\">Report of a campaign of simulated");
    html.raw(" runs</p>\n<h1>").text(about.title()).raw("</h1>\n<p class=\"purpose\">");
    html.text(about.purpose()).raw("</p>\n<dl class=\"facts\">\n");
    html.fact("Cases", "", CaseWords.number(results.cases()));
    html.fact("Faults", "", Integer.toString(about.faults().size()));
    html.fact("Phases", "", Integer.toString(about.phases().size()));
    html.fact("Requirements", "", Integer.toString(about.requirements().size()));
    html.fact("Seed", "", Long.toString(about.seed()));
    html.fact("Shard", "", CampaignHeadline.share(results));
    html.fact("Tankwright", "", about.version());
    html.fact("Campaign file", "", about.file());
    html.fact("SHA-256 of campaign, scenarios and baths", "long sum", about.sha256());
    return html.raw("</dl>\n</div>\n").toString();
  }

  /** What failed or shows nothing, right under the head; empty when all is well. */
  static String attention(CampaignResults results) {
    Html items = new Html();
    if (!results.isComplete()) {
      String missing = CaseWords.number(results.wanted() - results.cases());
      item(items, "open", "The campaign is not complete", missing + " cases were never run.");
    }
    for (RequirementSummary summary : results.requirements()) {
      if (summary.failed() > 0) {
        item(items, "failed", summary.required().name(), CaseWords.counts(summary) + ".");
      }
    }
    for (RequirementSummary summary : results.vacuous()) {
      item(
          items,
          "open",
          summary.required().name(),
          results.isWhole()
              ? "No case exercised it, so nothing is shown about it."
              : "No case of this shard exercised it; another shard may.");
    }
    empty(items, results);
    String all = items.toString();
    return all.isEmpty()
        ? ""
        : "<section class=\"attention\" aria-labelledby=\"attention\">\n"
            + "<h2 id=\"attention\">What needs attention</h2>\n<ul>\n"
            + all
            + "</ul>\n</section>\n";
  }

  private static void empty(Html items, CampaignResults results) {
    for (CaseOutcome outcome :
        new CaseOutcome[] {CaseOutcome.NOT_REACHED, CaseOutcome.NOT_EXERCISED}) {
      Html links = new Html();
      int count = 0;
      for (CellSummary cell : results.cells()) {
        if (cell.outcome() == outcome) {
          links.raw(count == 0 ? "" : ", ").raw("<a href=\"#").raw(HeatMap.id(results, cell));
          links.raw("\">").text(cell.cell().toString()).raw("</a>");
          count++;
        }
      }
      if (count > 0) {
        String what = outcome == CaseOutcome.NOT_REACHED ? "never reached" : "never exercised";
        items.raw("<li class=\"is-open\">").shape("open").raw("<p><strong>");
        items.text(Words.count(count, "cell") + " " + what).raw("</strong><br>");
        items.raw(links.toString()).raw("</p></li>\n");
      }
    }
  }

  private static void item(Html html, String key, String what, String story) {
    html.raw("<li class=\"is-").raw(key).raw("\">").shape(key).raw("<p><strong>").text(what);
    html.raw("</strong> <span class=\"word\">");
    html.raw(key.equals("failed") ? "failed" : "not shown").raw("</span><br>").text(story);
    html.raw("</p></li>\n");
  }
}
