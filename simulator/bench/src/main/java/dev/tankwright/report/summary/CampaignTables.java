package dev.tankwright.report.summary;

import dev.tankwright.campaign.About;
import dev.tankwright.campaign.RequirementSummary;
import dev.tankwright.report.page.Html;
import dev.tankwright.report.page.OutcomeMark;
import dev.tankwright.report.results.CampaignHeadline;
import dev.tankwright.report.results.CampaignResults;
import dev.tankwright.report.text.CaseWords;
import dev.tankwright.report.text.Words;

/** Tables of a campaign's page and of its summary. */
public final class CampaignTables {
  private CampaignTables() {}

  /** Every requirement over all cases. */
  public static String requirements(CampaignResults results) {
    Html html = new Html();
    html.raw("<table class=\"changes\">\n<thead><tr>").column("", "Outcome");
    html.column("", "Requirement").column("num", "Held in").column("num", "Failed in");
    html.column("num", "Not exercised in").column("num", "Least margin");
    html.column("num", "Worst case").raw("</tr></thead>\n<tbody>\n");
    results.requirements().forEach(summary -> row(html, summary));
    return html.raw("</tbody>\n</table>\n").toString();
  }

  private static void row(Html html, RequirementSummary summary) {
    String key = OutcomeMark.key(CampaignResults.plain(summary));
    html.raw("<tr><td class=\"outcome is-").raw(key).raw("\">").shape(key);
    html.raw("<span class=\"word\">").text(Words.outcome(CampaignResults.plain(summary)));
    html.raw("</span></td><th scope=\"row\">").id(summary.required().id());
    html.text(summary.required().name()).raw("<code>");
    html.text(summary.required().statement()).raw("</code></th><td class=\"num\">");
    html.text(CaseWords.number(summary.held())).raw("</td><td class=\"num\">");
    html.text(CaseWords.number(summary.failed())).raw("</td><td class=\"num\">");
    html.text(CaseWords.number(summary.notExercised())).raw("</td><td class=\"num margin\">");
    html.text(CaseWords.margin(summary.leastMargin())).raw("</td><td class=\"num\">");
    summary.worstCase().ifPresentOrElse(html::raw, () -> html.raw("\u2013"));
    html.raw("</td></tr>\n");
  }

  /** What was run. */
  public static String inputs(CampaignResults results) {
    About about = results.about();
    Html html = new Html().raw("<table class=\"pairs\">\n<tbody>\n");
    html.pair("Campaign file", about.file());
    html.pair("SHA-256 of campaign, scenarios and baths", about.sha256());
    html.pair("Tankwright", about.version());
    html.pair("Seed", Long.toString(about.seed()));
    html.pair("Shard", CampaignHeadline.share(results));
    html.pair("Scenarios", String.join(", ", about.scenarios()));
    html.pair("Baths", String.join(", ", about.profiles()));
    html.pair("Faults", String.join(", ", about.faults()));
    html.pair("Phases", String.join(", ", about.phases().stream().map(Words::of).toList()));
    return html.raw("</tbody>\n</table>\n").toString();
  }
}
