package dev.tankwright.report.changes;

import dev.tankwright.report.page.Html;
import dev.tankwright.report.page.OutcomeMark;
import dev.tankwright.report.page.Page;
import dev.tankwright.report.page.Resource;
import dev.tankwright.report.results.CampaignResults;
import dev.tankwright.report.results.JudgedLine;
import dev.tankwright.report.results.Results;
import dev.tankwright.report.results.RunResults;
import dev.tankwright.report.text.Decimal;
import dev.tankwright.report.text.Words;
import dev.tankwright.scenario.Verdict;
import java.util.List;
import java.util.Optional;

/**
 * What has changed against an earlier release, as one HTML page that needs nothing else and fetches
 * nothing. The same comparison gives the same bytes.
 */
final class ChangesPage {
  private ChangesPage() {}

  /** The page, UTF-8. */
  static byte[] render(Comparison comparison) {
    return new Page("changes.html")
        .title(comparison.headline())
        .icon(outcome(comparison))
        .style("palette.css", "report.css", "pages.css")
        .put("shapes", Resource.own("shapes.html"))
        .put("head", head(comparison))
        .put("changes", changes(comparison))
        .put("unchanged", unchanged(comparison))
        .put("inputs", inputs(comparison.inputs()))
        .render();
  }

  /** Regressions are failures; a loss alone needs a look. */
  static Verdict.Outcome outcome(Comparison comparison) {
    if (comparison.hasRegressed()) {
      return Verdict.Outcome.FAILED;
    }
    return comparison.hasLost() ? Verdict.Outcome.NOT_EXERCISED : Verdict.Outcome.HELD;
  }

  private static String head(Comparison comparison) {
    Html html = new Html();
    String key = OutcomeMark.key(outcome(comparison));
    html.raw("<div class=\"verdict is-").raw(key).raw("\">\n").shape(key);
    html.raw("<p class=\"headline\">").text(comparison.headline()).raw("</p>\n<p class=\"rest\">");
    html.text(comparison.rest()).raw("</p>\n</div>\n<div class=\"about\"><p class=\"kind\">");
    html.raw("Changes against an earlier release</p>\n<h1>").text(title(comparison.after()));
    html.raw("</h1>\n<dl class=\"facts\">\n");
    html.fact("Baseline", "long", comparison.before().folder().toString());
    html.fact("Baseline version", "", ChangesText.versions(comparison.before()));
    html.fact("Current results", "long", comparison.after().folder().toString());
    html.fact("Current version", "", ChangesText.versions(comparison.after()));
    html.fact("Compared", "", Words.count(comparison.changes().size(), "line"));
    html.fact("Tolerance", "", Decimal.of(comparison.tolerance() * 100, 1) + " % of a margin");
    return html.raw("</dl></div>\n").toString();
  }

  private static String title(Results results) {
    if (results instanceof CampaignResults campaign) {
      return campaign.about().title();
    }
    RunResults runs = (RunResults) results;
    return runs.isOneRun()
        ? runs.runs().get(0).about().title()
        : Words.count(runs.runs().size(), "scenario");
  }

  private static String changes(Comparison comparison) {
    Html html = new Html();
    boolean any = false;
    for (Change.Kind kind : Change.Kind.values()) {
      List<Change> changes = comparison.of(kind);
      if (kind != Change.Kind.SAME && !changes.isEmpty()) {
        table(html, kind, changes);
        any = true;
      }
    }
    return any ? html.toString() : "<p>All outcomes and margins are unchanged.</p>\n";
  }

  private static void table(Html html, Change.Kind kind, List<Change> changes) {
    String id = "k-" + kind.ordinal();
    html.raw("<h3 class=\"kind is-").raw(mark(kind)).raw("\" id=\"").raw(id).raw("\">");
    html.shape(mark(kind)).raw("<span class=\"word\">").text(Words.sentence(kind.words()));
    html.raw("</span> ").raw(changes.size()).raw("</h3>\n<div class=\"box\" tabindex=\"0\" ");
    html.raw("role=\"region\" aria-labelledby=\"").raw(id).raw("\">\n<table class=\"changes\">\n");
    html.raw("<thead><tr>").column("", "Where").column("", "Requirement or cell");
    html.column("num", "Margin before").column("num", "Margin now").column("", "What happened");
    html.raw("</tr></thead>\n<tbody>\n");
    changes.forEach(change -> row(html, change));
    html.raw("</tbody>\n</table>\n</div>\n");
  }

  private static void row(Html html, Change change) {
    JudgedLine line = change.line();
    html.raw("<tr><td>").text(line.group()).raw("</td><th scope=\"row\">");
    html.id(line.id()).text(line.name());
    html.raw("</th><td class=\"num\">").text(margin(change.before()));
    html.raw("</td><td class=\"num margin\">").text(margin(change.after()));
    html.raw("</td><td>").text(line.detail()).raw("</td></tr>\n");
  }

  private static String margin(Optional<JudgedLine> line) {
    String text = line.map(JudgedLine::marginText).orElse("");
    return text.isEmpty() ? "\u2013" : Words.printed(text);
  }

  /** The shape of a kind: what fails, what needs a look, what is fine. */
  private static String mark(Change.Kind kind) {
    return switch (kind) {
      case NEWLY_FAILING, STILL_FAILING -> "failed";
      case NO_LONGER_EXERCISED, MISSING, MARGIN_LOST, UNIT_CHANGED -> "open";
      case NEWLY_HOLDING, NEW, MARGIN_GAINED, SAME -> "held";
    };
  }

  private static String unchanged(Comparison comparison) {
    int same = comparison.of(Change.Kind.SAME).size();
    return Words.count(same, "line") + (same == 1 ? " is" : " are") + " unchanged.";
  }

  private static String inputs(List<InputChange> inputs) {
    if (inputs.isEmpty()) {
      return "<p>Scenario files, seeds and the controller's limits are those of the"
          + " baseline.</p>\n";
    }
    Html html = new Html();
    html.raw("<table>\n<thead><tr>").column("", "Where").column("", "What").column("", "Before");
    html.column("", "Now").raw("</tr></thead>\n<tbody>\n");
    for (InputChange input : inputs) {
      html.raw("<tr><td>").text(input.where()).raw("</td><th scope=\"row\">").text(input.what());
      html.raw("</th><td>").text(InputChange.brief(input.before())).raw("</td><td>");
      html.text(InputChange.brief(input.after())).raw("</td></tr>\n");
    }
    return html.raw("</tbody>\n</table>\n").toString();
  }
}
