package dev.tankwright.report.run;

import dev.tankwright.report.page.Html;
import dev.tankwright.report.page.OutcomeMark;
import dev.tankwright.report.results.EventsSeen;
import dev.tankwright.report.results.Tally;
import dev.tankwright.report.text.Words;
import dev.tankwright.scenario.Verdict;
import dev.tankwright.scenario.run.RunResult;

/** Top of the page: the verdict at a glance, what was run, and what needs attention. */
final class RunHead {
  private RunHead() {}

  static String of(RunResult run, EventsSeen seen) {
    Html html = new Html();
    Tally tally = Tally.of(run.verdicts());
    verdict(html, run, tally);
    html.raw("<div class=\"about\"><p class=\"kind\">Report of one simulated run</p>\n<h1>");
    html.text(run.about().title()).raw("</h1>\n<p class=\"purpose\">").text(run.about().purpose());
    html.raw("</p>\n");
    facts(html, run, seen);
    html.raw("</div>\n");
    return html.toString();
  }

  private static void verdict(Html html, RunResult run, Tally tally) {
    String key = OutcomeMark.key(tally.outcome());
    html.raw("<div class=\"verdict is-").raw(key).raw("\">\n").shape(key);
    html.raw("<p class=\"headline\">").text(tally.headline()).raw("</p>\n");
    if (!tally.rest().isEmpty()) {
      html.raw("<p class=\"rest\">").text(tally.rest()).raw("</p>\n");
    }
    html.raw("<ol class=\"glance\" aria-label=\"Requirements in the order of the file\">\n");
    int number = 0;
    for (Verdict verdict : run.verdicts()) {
      number++;
      String outcome = Words.outcome(verdict.outcome());
      html.raw("<li><a class=\"is-")
          .raw(OutcomeMark.key(verdict.outcome()))
          .raw("\" href=\"#r")
          .raw(number);
      html.raw("\" title=\"").text(verdict.name() + ": " + outcome).raw("\">");
      html.shape(OutcomeMark.key(verdict.outcome())).raw("<span class=\"unseen\">");
      html.text(verdict.name() + ": " + outcome).raw("</span></a></li>\n");
    }
    html.raw("</ol>\n</div>\n");
  }

  private static void facts(Html html, RunResult run, EventsSeen seen) {
    RunResult.About about = run.about();
    html.raw("<dl class=\"facts\">\n");
    html.fact("Device", "", about.device());
    html.fact("Simulated start", "", about.startedAt().replace('T', ' '));
    html.fact("Length", "", Words.moment(about.durationMillis()) + " min:s");
    html.fact("Seed", "", Long.toString(about.seed()));
    html.fact("Tankwright", "", about.version());
    html.fact("Events", "", DeliverySection.inShort(seen));
    html.fact("Scenario file", "long", about.file());
    html.fact("SHA-256 of the file", "long sum", about.sha256());
    html.raw("</dl>\n");
  }

  /** What did not hold, with its story, right under the head; empty when everything held. */
  static String attention(RunResult run) {
    Tally tally = Tally.of(run.verdicts());
    if (tally.failed() + tally.notExercised() == 0) {
      return "";
    }
    Html html = new Html();
    html.raw("<section class=\"attention\" aria-labelledby=\"attention\">\n");
    html.raw("<h2 id=\"attention\">What needs attention</h2>\n<ul>\n");
    for (Verdict.Outcome outcome :
        new Verdict.Outcome[] {Verdict.Outcome.FAILED, Verdict.Outcome.NOT_EXERCISED}) {
      for (Verdict verdict : run.verdicts()) {
        if (verdict.outcome() == outcome) {
          item(html, verdict);
        }
      }
    }
    return html.raw("</ul>\n</section>\n").toString();
  }

  private static void item(Html html, Verdict verdict) {
    String key = OutcomeMark.key(verdict.outcome());
    html.raw("<li class=\"is-").raw(key).raw("\">").shape(key).raw("<p><strong>");
    html.text(verdict.name()).raw("</strong> <span class=\"word\">");
    html.text(Words.outcome(verdict.outcome())).raw("</span>");
    verdict.momentMillis().ifPresent(at -> html.raw(" at ").moment(at));
    html.raw("<br>").text(verdict.detail()).raw("</p></li>\n");
  }
}
