package dev.tankwright.report.summary;

import dev.tankwright.report.page.Html;
import dev.tankwright.report.page.OutcomeMark;
import dev.tankwright.report.results.EventsSeen;
import dev.tankwright.report.results.JudgedLine;
import dev.tankwright.report.results.RunResults;
import dev.tankwright.report.results.SavedRun;
import dev.tankwright.report.results.Tally;
import dev.tankwright.report.text.ChangedParameters;
import dev.tankwright.report.text.Words;
import dev.tankwright.scenario.Verdict;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Function;

/** The parts of a summary of one run or of many. */
final class RunsSummary {
  private final RunResults results;
  private final Html html = new Html();

  private RunsSummary(RunResults results) {
    this.results = results;
  }

  static SummaryParts of(RunResults results) {
    Tally tally = Tally.of(results.verdicts());
    boolean one = results.isOneRun();
    SavedRun first = results.runs().get(0);
    return new SummaryParts(
        tally.outcome(),
        one ? first.about().title() : Words.count(results.runs().size(), "scenario") + " run",
        one
            ? first.about().purpose()
            : "Each scenario is one simulated run with its own requirements.",
        tally.headline(),
        tally.rest(),
        new RunsSummary(results).counts(tally),
        new RunsSummary(results).inputs(),
        new RunsSummary(results).requirements(),
        new RunsSummary(results).attention());
  }

  private String counts(Tally tally) {
    html.fact("Scenarios", "", Integer.toString(results.runs().size()));
    html.fact("Requirements", "", Integer.toString(tally.all()));
    html.fact("Held", "", Integer.toString(tally.held()));
    html.fact("Failed", "", Integer.toString(tally.failed()));
    html.fact("Not exercised", "", Integer.toString(tally.notExercised()));
    html.fact("Safety requirements", "", Long.toString(ids()));
    html.fact("Tankwright", "", each(run -> run.about().version()));
    html.fact("Device", "", each(run -> run.about().device()));
    return html.toString();
  }

  private long ids() {
    return results.verdicts().stream()
        .map(Verdict::id)
        .filter(id -> !id.isEmpty())
        .distinct()
        .count();
  }

  private String each(Function<SavedRun, String> part) {
    return String.join(", ", results.runs().stream().map(part).distinct().sorted().toList());
  }

  private String inputs() {
    html.raw("<table class=\"inputs\">\n<thead><tr>").column("", "Scenario");
    html.column("num", "Seed").column("num", "Length, min:s").column("num", "Events received");
    html.column("", "SHA-256 of the scenario file").raw("</tr></thead>\n<tbody>\n");
    for (SavedRun run : results.runs()) {
      html.raw("<tr><th scope=\"row\">").text(run.about().title());
      html.raw("<span class=\"under\">").text(results.isOneRun() ? run.about().file() : run.name());
      html.raw("</span></th><td class=\"num\">").raw(run.about().seed());
      html.raw("</td><td class=\"num\">").raw(Words.moment(run.about().durationMillis()));
      html.raw("</td><td class=\"num\">").text(events(run.events()));
      html.raw("</td><td class=\"sum\">").text(run.about().sha256()).raw("</td></tr>\n");
    }
    html.raw("</tbody>\n</table>\n");
    changed();
    return html.toString();
  }

  private static String events(EventsSeen seen) {
    return seen.published() ? seen.received() + " of " + seen.sent() : "not published";
  }

  /** Parameters that a scenario sets to something else than the standard. */
  private void changed() {
    List<String> changed = new ArrayList<>();
    for (SavedRun run : results.runs()) {
      String list = ChangedParameters.of(run.controller());
      if (!list.isEmpty()) {
        changed.add(results.isOneRun() ? list : run.name() + ": " + list);
      }
    }
    html.raw("<p class=\"note\">Limits and times of the controller: ");
    html.raw(changed.isEmpty() ? "all standard." : "standard except for these.").raw("</p>\n");
    if (!changed.isEmpty()) {
      html.raw("<ul class=\"changed\">\n");
      changed.forEach(each -> html.raw("<li>").text(each).raw("</li>\n"));
      html.raw("</ul>\n");
    }
  }

  private String requirements() {
    html.raw("<table class=\"required\">\n<thead><tr>").column("", "Id").column("", "Requirement");
    html.column("", "Outcome").column("num", "Margin").raw("</tr></thead>\n<tbody>\n");
    List<JudgedLine> lines = new ArrayList<>(results.lines());
    lines.sort(Comparator.comparing(line -> line.id().isEmpty() ? "~" : line.id()));
    for (JudgedLine line : lines) {
      html.raw("<tr><td class=\"id\">").text(line.id().isEmpty() ? "\u2013" : line.id());
      html.raw("</td><th scope=\"row\">").text(line.name());
      html.raw("<span class=\"under\">").text(results.isOneRun() ? "" : line.group());
      OutcomeMark.cell(html.raw("</span></th>"), line.outcome());
      html.raw("<td class=\"num\">").text(Words.printed(line.marginText()));
      html.raw("</td></tr>\n");
    }
    return html.raw("</tbody>\n</table>\n").toString();
  }

  private String attention() {
    List<JudgedLine> open =
        results.lines().stream().filter(l -> l.outcome() != Verdict.Outcome.HELD).toList();
    if (open.isEmpty()) {
      return html.raw("<p>Every requirement was exercised and held.</p>\n").toString();
    }
    html.raw("<ul class=\"open\">\n");
    for (JudgedLine line : open) {
      String key = OutcomeMark.key(line.outcome());
      html.raw("<li class=\"is-").raw(key).raw("\">").shape(key).raw("<p><strong>");
      html.text(line.name()).raw("</strong> <span class=\"word\">");
      html.text(Words.outcome(line.outcome())).raw("</span> <span class=\"under\">");
      html.text(results.isOneRun() ? line.detail() : line.group() + ": " + line.detail());
      html.raw("</span></p></li>\n");
    }
    return html.raw("</ul>\n").toString();
  }
}
