package dev.tankwright.report.run;

import dev.tankwright.report.page.Html;
import dev.tankwright.report.page.OutcomeMark;
import dev.tankwright.report.text.Words;
import dev.tankwright.scenario.Verdict;
import java.util.List;

/** The requirements in the order of the file, with outcome, margin and moment. */
final class RequirementTable {
  private RequirementTable() {}

  static String of(List<Verdict> verdicts) {
    Html html = new Html();
    html.raw("<table class=\"requirements\">\n<thead><tr>");
    html.column("", "Outcome").column("", "Requirement").column("num", "Margin");
    html.column("num", "Moment, min:s").column("", "What happened");
    html.raw("</tr></thead>\n<tbody>\n");
    int number = 0;
    for (Verdict verdict : verdicts) {
      number++;
      row(html, verdict, number);
    }
    return html.raw("</tbody>\n</table>\n").toString();
  }

  private static void row(Html html, Verdict verdict, int number) {
    String key = OutcomeMark.key(verdict.outcome());
    html.raw("<tr id=\"r")
        .raw(number)
        .raw("\" class=\"is-")
        .raw(key)
        .raw("\"><td class=\"outcome\">");
    html.shape(key).raw("<span class=\"word\">").text(Words.outcome(verdict.outcome()));
    html.raw("</span></td><th scope=\"row\">");
    if (!verdict.id().isEmpty()) {
      html.raw("<span class=\"id\">").text(verdict.id()).raw("</span> ");
    }
    html.text(verdict.name()).raw("<code>").text(verdict.statement()).raw("</code></th>");
    html.raw("<td class=\"num margin\">");
    if (verdict.margin().isPresent()) {
      html.text(Words.printed(Words.margin(verdict.margin().getAsDouble(), verdict.marginUnit())));
    } else {
      none(html);
    }
    html.raw("</td><td class=\"num\">");
    verdict.momentMillis().ifPresentOrElse(html::moment, () -> none(html));
    html.raw("</td><td class=\"detail\">").text(verdict.detail()).raw("</td></tr>\n");
  }

  private static void none(Html html) {
    html.raw("<span aria-hidden=\"true\">\u2013</span><span class=\"unseen\">none</span>");
  }
}
