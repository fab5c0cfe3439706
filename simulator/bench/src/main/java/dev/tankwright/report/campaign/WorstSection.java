package dev.tankwright.report.campaign;

import dev.tankwright.campaign.CaseResult;
import dev.tankwright.report.page.Html;
import dev.tankwright.report.page.OutcomeMark;
import dev.tankwright.report.results.CampaignResults;
import dev.tankwright.report.run.MarkList;
import dev.tankwright.report.text.CaseWords;
import dev.tankwright.report.text.Words;
import dev.tankwright.scenario.Verdict;
import dev.tankwright.scenario.run.Mark;
import dev.tankwright.scenario.run.RunResult;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** One of the worst cases: verdicts, moments, traces, scenario, replay. */
final class WorstSection {
  private static final long BEFORE = 10_000;
  private static final long AFTER = 30_000;

  /** Moments that are listed at most. */
  private static final int MOMENTS = 12;

  private WorstSection() {}

  /**
   * Appends it, folded but for its heading.
   *
   * @param open whether it is unfolded at first
   */
  static void write(Html html, CampaignResults results, WorstCase worst, boolean open) {
    CaseResult result = worst.result();
    String key = OutcomeMark.key(CampaignResults.plain(result.outcome()));
    html.raw("<article class=\"worst is-").raw(key).raw("\" id=\"w").raw(result.number());
    html.raw("\" tabindex=\"-1\">\n<details").raw(open ? " open" : "").raw("><summary><h3>");
    html.shape(key).text("Case " + result.number() + ": ");
    html.text(result.cell().fault() + " in " + Words.of(result.cell().phase())).raw("</h3>\n");
    html.raw("<p>").text(story(result)).raw("</p></summary>\n<p class=\"note\">");
    html.text("Setting: " + CellSection.setting(result.setting()) + ".");
    html.raw("</p>\n");
    plots(html, worst);
    verdicts(html, worst.run().verdicts());
    moments(html, worst);
    html.raw("<details><summary>Scenario of this case</summary><pre>").text(worst.scenario());
    html.raw("</pre></details>\n");
    CellSection.replay(html, results, result.number());
    html.raw("<p class=\"ways\"><a href=\"").text(worst.report());
    html.raw("\">Full report with zoomable plots</a> <a href=\"#");
    html.raw(HeatMap.id(results, worst.cell())).raw("\">Its cell</a> ");
    html.raw("<a href=\"#heat\">Back to the matrix</a></p>\n</details>\n</article>\n");
  }

  private static String story(CaseResult result) {
    StringBuilder out = new StringBuilder("Injected at ");
    out.append(Words.moment(result.onsetMillis().orElse(0))).append(" min:s; ");
    if (result.detected().isPresent()) {
      out.append(Words.of(result.detected().get())).append(" was raised after ");
      out.append(CaseWords.millis(result.reactionMillis()));
    } else {
      out.append("no fault was raised");
    }
    out.append("; at the end: ").append(result.ended().map(Words::of).orElse("no supply"));
    return out.append('.').toString();
  }

  private static void plots(Html html, WorstCase worst) {
    RunResult run = worst.run();
    long end = run.about().durationMillis();
    html.raw("<div class=\"traces\">\n").raw(TracePlot.of(run, 0, end, "Whole run, min:s"));
    if (worst.result().onsetMillis().isPresent()) {
      long onset = worst.result().onsetMillis().getAsLong();
      long reaction = worst.result().reactionMillis().orElse(0);
      long from = Math.max(0, onset - BEFORE);
      long to = Math.min(end, onset + Math.max(AFTER, reaction + reaction / 4));
      html.raw(TracePlot.of(run, from, to, "Around the injection, min:s"));
    }
    html.raw("</div>\n");
  }

  private static void verdicts(Html html, List<Verdict> verdicts) {
    List<Verdict> sorted = new ArrayList<>(verdicts);
    sorted.sort(Comparator.comparing(v -> v.outcome() != Verdict.Outcome.FAILED));
    html.raw("<div class=\"box\" tabindex=\"0\" role=\"region\" aria-label=\"Requirements of this");
    html.raw(" case\">\n<table class=\"changes\">\n<thead><tr>").column("", "Outcome");
    html.column("", "Requirement").column("num", "Margin").column("num", "Moment, min:s");
    html.column("", "What happened").raw("</tr></thead>\n<tbody>\n");
    for (Verdict verdict : sorted) {
      String key = OutcomeMark.key(verdict.outcome());
      html.raw("<tr><td class=\"outcome is-").raw(key).raw("\">").shape(key);
      html.raw("<span class=\"word\">").text(Words.outcome(verdict.outcome()));
      html.raw("</span></td><th scope=\"row\">").id(verdict.id());
      html.text(verdict.name()).raw("</th><td class=\"num margin\">");
      html.text(margin(verdict)).raw("</td><td class=\"num\">");
      verdict.momentMillis().ifPresent(m -> html.raw(Words.moment(m)));
      html.raw("</td><td>").text(verdict.detail()).raw("</td></tr>\n");
    }
    html.raw("</tbody>\n</table>\n</div>\n");
  }

  private static String margin(Verdict verdict) {
    return verdict.margin().isEmpty()
        ? "\u2013"
        : Words.printed(Words.margin(verdict.margin().getAsDouble(), verdict.marginUnit()));
  }

  private static void moments(Html html, WorstCase worst) {
    long onset = worst.result().onsetMillis().orElse(0);
    List<Mark> marks =
        worst.run().marks().stream().filter(mark -> mark.atMillis() >= onset).toList();
    html.raw("<ol class=\"moments\" aria-label=\"From the injection on\">\n");
    for (Mark mark : marks.subList(0, Math.min(MOMENTS, marks.size()))) {
      String key = MarkList.key(mark.kind());
      html.raw("<li class=\"mark-").raw(key).raw("\"><span class=\"num\">");
      html.raw(Words.moment(mark.atMillis())).raw("</span>").shape(key).raw("<span>");
      html.text(key + " " + mark.text()).raw("</span></li>\n");
    }
    html.raw("</ol>\n");
    if (marks.size() > MOMENTS) {
      html.raw("<p class=\"note\">").raw(marks.size() - MOMENTS);
      html.raw(" more are in the full report.</p>\n");
    }
  }
}
