package dev.tankwright.report.summary;

import dev.tankwright.campaign.CaseOutcome;
import dev.tankwright.campaign.CellSummary;
import dev.tankwright.campaign.RequirementSummary;
import dev.tankwright.report.page.Html;
import dev.tankwright.report.page.OutcomeMark;
import dev.tankwright.report.results.CampaignHeadline;
import dev.tankwright.report.results.CampaignResults;
import dev.tankwright.report.text.CaseWords;
import dev.tankwright.report.text.Words;
import dev.tankwright.scenario.Verdict;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** The parts of a summary of a campaign. */
final class CampaignSummary {
  private final CampaignResults results;
  private final Html html = new Html();

  private CampaignSummary(CampaignResults results) {
    this.results = results;
  }

  static SummaryParts of(CampaignResults results) {
    return new SummaryParts(
        results.outcome(),
        results.about().title(),
        results.about().purpose(),
        CampaignHeadline.headline(results),
        CampaignHeadline.rest(results),
        new CampaignSummary(results).counts(),
        CampaignTables.inputs(results),
        new CampaignSummary(results).requirements(),
        new CampaignSummary(results).attention());
  }

  private String counts() {
    html.fact("Cases", "", CaseWords.number(results.cases()));
    for (CaseOutcome outcome : CaseOutcome.values()) {
      String name = Words.sentence(CaseWords.outcome(outcome));
      html.fact(name, "", CaseWords.number(results.count(outcome)));
    }
    html.fact("Requirements", "", Integer.toString(results.requirements().size()));
    html.fact("Faults", "", Integer.toString(results.about().faults().size()));
    html.fact("Phases", "", Integer.toString(results.about().phases().size()));
    return html.fact("Tankwright", "", results.about().version()).toString();
  }

  private String requirements() {
    html.raw("<table class=\"required\">\n<thead><tr>").column("", "Id").column("", "Requirement");
    html.column("", "Outcome").column("num", "Held in").column("num", "Failed in");
    html.column("num", "Least margin").raw("</tr></thead>\n<tbody>\n");
    List<RequirementSummary> all = new ArrayList<>(results.requirements());
    all.sort(Comparator.comparing(s -> s.required().id().isEmpty() ? "~" : s.required().id()));
    for (RequirementSummary summary : all) {
      String id = summary.required().id();
      html.raw("<tr><td class=\"id\">").text(id.isEmpty() ? "\u2013" : id);
      html.raw("</td><th scope=\"row\">").text(summary.required().name());
      html.raw("<span class=\"under\">").text(summary.required().statement());
      OutcomeMark.cell(html.raw("</span></th>"), CampaignResults.plain(summary));
      html.raw("<td class=\"num\">").text(CaseWords.number(summary.held()));
      html.raw("</td><td class=\"num\">").text(CaseWords.number(summary.failed()));
      html.raw("</td><td class=\"num\">").text(CaseWords.margin(summary.leastMargin()));
      html.raw("</td></tr>\n");
    }
    return html.raw("</tbody>\n</table>\n").toString();
  }

  private String attention() {
    List<Html> items = new ArrayList<>();
    for (RequirementSummary summary : results.vacuous()) {
      items.add(item(Verdict.Outcome.NOT_EXERCISED, summary.required().name(), "in no case"));
    }
    for (CellSummary cell : results.cells()) {
      if (cell.outcome() != CaseOutcome.HELD) {
        Verdict.Outcome outcome = CampaignResults.plain(cell.outcome());
        items.add(item(outcome, cell.cell().toString(), story(cell)));
      }
    }
    if (items.isEmpty()) {
      return "<p>Every cell was reached, and every requirement was exercised and held.</p>\n";
    }
    html.raw("<ul class=\"open\">\n");
    items.forEach(item -> html.raw(item.toString()));
    return html.raw("</ul>\n").toString();
  }

  private static String story(CellSummary cell) {
    return cell.outcome() == CaseOutcome.FAILED
        ? CaseWords.number(cell.failed()) + " of " + CaseWords.number(cell.cases()) + " cases"
        : CaseWords.outcome(cell.outcome()) + " in any case";
  }

  private static Html item(Verdict.Outcome outcome, String what, String story) {
    String key = OutcomeMark.key(outcome);
    Html item = new Html().raw("<li class=\"is-").raw(key).raw("\">").shape(key);
    item.raw("<p><strong>").text(what).raw("</strong> <span class=\"word\">");
    item.text(Words.outcome(outcome)).raw("</span> <span class=\"under\">").text(story);
    return item.raw("</span></p></li>\n");
  }
}
