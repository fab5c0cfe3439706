package dev.tankwright.report.campaign;

import dev.tankwright.loop.Signal;
import dev.tankwright.loop.Trace;
import dev.tankwright.report.page.Html;
import dev.tankwright.report.run.MarkList;
import dev.tankwright.report.run.PhaseStays;
import dev.tankwright.report.text.Decimal;
import dev.tankwright.report.text.Words;
import dev.tankwright.scenario.Verdict;
import dev.tankwright.scenario.run.Mark;
import dev.tankwright.scenario.run.PhaseSpan;
import dev.tankwright.scenario.run.RunResult;
import java.util.List;

/**
 * A small drawing of a window of a run that needs no script: temperatures as lines, phases and
 * actuators as bands, marks and failures as signs. It stretches with its place; what is written on
 * it is text of the page, so that it does not stretch along. A line goes through the lowest and the
 * highest value of every thousandth part of the window, so no peak is lost.
 */
final class TracePlot {
  /** Columns of the drawing. */
  static final int WIDE = 1_000;

  private static final int TALL = 200;

  /** Share of the width from which on a phase has room for its name, also on a phone. */
  private static final double ROOM_FOR_A_NAME = 0.2;

  private static final List<Signal> LINES =
      List.of(Signal.SETPOINT, Signal.MEASURED_TEMPERATURE, Signal.LIQUID_TEMPERATURE);
  private static final List<String> INKS = List.of("setpoint", "measured", "liquid");
  private static final List<Signal> LANES =
      List.of(Signal.HEATER, Signal.CUT_OFF_RELAY, Signal.ULTRASOUND, Signal.LID_OPEN);
  private static final List<String> LANE_NAMES =
      List.of("Heater", "Cut-off relay", "Ultrasound", "Lid open");
  private static final List<String> LANE_INKS = List.of("heat", "heat", "sound", "state");

  private final Html html = new Html();
  private final RunResult run;
  private final long from;
  private final long to;
  private double low = Double.POSITIVE_INFINITY;
  private double high = Double.NEGATIVE_INFINITY;

  private TracePlot(RunResult run, long from, long to) {
    this.run = run;
    this.from = from;
    this.to = Math.max(to, from + 1);
  }

  /** The drawing of a window, ms since the start of the run. */
  static String of(RunResult run, long from, long to, String caption) {
    TracePlot plot = new TracePlot(run, from, to);
    plot.range();
    plot.html.raw("<figure class=\"trace\">\n<figcaption>").text(caption).raw("</figcaption>\n");
    plot.phases();
    plot.lines();
    plot.lanes();
    plot.axis();
    return plot.html.raw("</figure>\n").toString();
  }

  private double share(long millis) {
    return Math.max(0, Math.min(1, (double) (millis - from) / (to - from)));
  }

  /** True when a span of time has a part in the window. */
  private boolean isSeen(long start, long end) {
    return end >= from && start <= to;
  }

  private void range() {
    Trace trace = run.trace();
    for (int row = 0; row < trace.rows(); row++) {
      double value = trace.value(row, Signal.LIQUID_TEMPERATURE);
      if (isSeen(trace.millis(row), trace.millis(row)) && Double.isFinite(value)) {
        low = Math.min(low, value);
        high = Math.max(high, value);
      }
    }
    if (low > high) {
      low = 0;
      high = 1;
    }
    double air = Math.max(1, (high - low) * 0.1);
    low = Math.floor(low - air);
    high = Math.ceil(high + air);
  }

  /** In shares of the width, so that the names are not stretched. */
  private void phases() {
    html.raw("<svg class=\"band\" role=\"img\" aria-label=\"").text(phaseNames()).raw("\">");
    for (PhaseSpan span : run.phases()) {
      long end = span.enteredMillis() + span.lastedMillis();
      if (isSeen(span.enteredMillis(), end)) {
        double left = share(span.enteredMillis());
        double wide = share(end) - left;
        html.raw("<svg x=\"").raw(percent(left)).raw("\" width=\"").raw(percent(wide));
        html.raw("\" height=\"100%\"><rect width=\"100%\" height=\"100%\" class=\"phase-");
        html.raw(PhaseStays.key(span)).raw("\"/>");
        if (wide >= ROOM_FOR_A_NAME) {
          html.raw("<text x=\"4\" y=\"14\">").text(Words.of(span.phase())).raw("</text>");
        }
        html.raw("</svg>");
      }
    }
    html.raw("</svg>\n");
  }

  private String phaseNames() {
    List<String> names =
        run.phases().stream()
            .filter(
                span -> isSeen(span.enteredMillis(), span.enteredMillis() + span.lastedMillis()))
            .map(span -> Words.of(span.phase()) + " from " + Words.moment(span.enteredMillis()))
            .toList();
    return "Phases: " + String.join(", ", names);
  }

  private static String percent(double share) {
    return Decimal.of(share * 100, 2) + "%";
  }

  private void lines() {
    html.raw("<div class=\"field\"><svg viewBox=\"0 0 1000 200\" preserveAspectRatio=\"none\"");
    html.raw(" aria-hidden=\"true\">");
    run.marks().forEach(this::mark);
    for (Verdict verdict : run.verdicts()) {
      if (verdict.outcome() == Verdict.Outcome.FAILED && verdict.momentMillis().isPresent()) {
        upright(verdict.momentMillis().getAsLong(), "failed");
      }
    }
    for (int i = 0; i < LINES.size(); i++) {
      html.raw("<path class=\"line ink-").raw(INKS.get(i)).raw("\" d=\"");
      html.raw(TraceThinning.path(run.trace(), LINES.get(i), from, to, this::height));
      html.raw("\"/>");
    }
    html.raw("</svg><span class=\"top\">").text(Decimal.of(high, 0) + " \u00B0C");
    html.raw("</span><span class=\"bottom\">").text(Decimal.of(low, 0) + " \u00B0C");
    html.raw("</span></div>\n");
  }

  private void mark(Mark mark) {
    upright(mark.atMillis(), MarkList.key(mark.kind()));
  }

  private void upright(long millis, String kind) {
    if (isSeen(millis, millis)) {
      String x = Decimal.of(share(millis) * WIDE, 1);
      html.raw("<path class=\"upright mark-").raw(kind).raw("\" d=\"M").raw(x).raw(" 0V200\"/>");
    }
  }

  private int height(double value) {
    return (int) Math.round(TALL * Math.max(0, Math.min(1, (high - value) / (high - low))));
  }

  private void lanes() {
    html.raw("<div class=\"bands\">\n");
    for (int i = 0; i < LANES.size(); i++) {
      html.raw("<span>").text(LANE_NAMES.get(i)).raw("</span>");
      html.raw("<svg viewBox=\"0 0 1000 10\" preserveAspectRatio=\"none\" aria-hidden=\"true\">");
      html.raw("<path class=\"lane-").raw(LANE_INKS.get(i)).raw("\" d=\"");
      html.raw(TraceThinning.bands(run.trace(), LANES.get(i), from, to)).raw("\"/></svg>\n");
    }
    html.raw("</div>\n");
  }

  private void axis() {
    html.raw("<div class=\"times\" aria-hidden=\"true\">");
    for (int part = 0; part <= 4; part++) {
      long millis = from + (to - from) * part / 4;
      html.raw("<span>").text(Words.moment(millis / 10 * 10)).raw("</span>");
    }
    html.raw("</div>\n");
  }

  /** The signs of the lines and bands, once for all drawings of a page. */
  static String legend() {
    Html html = new Html();
    html.raw("<ul class=\"signs\">\n");
    String[][] lines = {
      {"liquid", "solution"}, {"measured", "measured, dashed"}, {"setpoint", "setpoint, dotted"}
    };
    for (String[] line : lines) {
      html.raw("<li><svg class=\"sample\" viewBox=\"0 0 28 8\" aria-hidden=\"true\">");
      html.raw("<path class=\"line ink-").raw(line[0]).raw("\" d=\"M0 4H28\"/></svg>");
      html.raw(line[1]).raw("</li>\n");
    }
    String[][] marks = {
      {"action", "action or injected fault, solid line"},
      {"event", "event, dotted line"},
      {"fault", "fault raised, dashed line"},
      {"failed", "requirement failed, dash-dot line"}
    };
    for (String[] mark : marks) {
      html.raw("<li><svg class=\"sample\" viewBox=\"0 0 28 8\" aria-hidden=\"true\">");
      html.raw("<path class=\"upright mark-").raw(mark[0]).raw("\" d=\"M0 4H28\"/></svg>");
      html.raw(mark[1]).raw("</li>\n");
    }
    return html.raw("</ul>\n").toString();
  }
}
