package dev.tankwright.report.run;

import dev.tankwright.report.page.Html;
import dev.tankwright.report.text.Decimal;
import dev.tankwright.report.text.Words;
import dev.tankwright.scenario.run.PhaseSpan;
import java.util.List;
import java.util.Locale;

/** Every stay in a phase: when, how long, and how warm the solution was at its end. */
public final class PhaseStays {
  private PhaseStays() {}

  static String of(List<PhaseSpan> phases) {
    Html html = new Html();
    html.raw("<table class=\"phases\">\n<thead><tr>").column("", "Phase");
    html.column("num", "Entered, min:s").column("num", "Lasted, min:s");
    html.column("num", "At its end, \u00B0C").raw("</tr></thead>\n<tbody>\n");
    for (PhaseSpan span : phases) {
      html.raw("<tr><th scope=\"row\"><span class=\"swatch phase-");
      html.raw(key(span)).raw("\"></span>").text(Words.of(span.phase()));
      html.raw("</th><td class=\"num\">").moment(span.enteredMillis());
      html.raw("</td><td class=\"num\">").raw(Words.moment(span.lastedMillis()));
      html.raw("</td><td class=\"num\">");
      html.text(Words.printed(Decimal.of(span.endCelsius(), 1)));
      html.raw("</td></tr>\n");
    }
    return html.raw("</tbody>\n</table>\n").toString();
  }

  /** Name of a phase in the style sheet. */
  public static String key(PhaseSpan span) {
    return span.phase().name().toLowerCase(Locale.ROOT).replace('_', '-');
  }
}
