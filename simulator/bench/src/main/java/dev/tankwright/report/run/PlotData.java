package dev.tankwright.report.run;

import dev.tankwright.controller.board.Parameter;
import dev.tankwright.loop.Signal;
import dev.tankwright.loop.Trace;
import dev.tankwright.report.page.ScriptJson;
import dev.tankwright.report.text.Decimal;
import dev.tankwright.report.text.Words;
import dev.tankwright.scenario.Verdict;
import dev.tankwright.scenario.run.Mark;
import dev.tankwright.scenario.run.PhaseSpan;
import dev.tankwright.scenario.run.RunResult;
import java.util.List;

/**
 * What the plots are drawn from, as JSON. Times are in ms. A line is a list of differences of
 * scaled whole numbers, {@code null} where there is no number; a step is a flat list of row, scaled
 * value, row, scaled value and so on, one pair per change. {@code data.js} reads it.
 */
final class PlotData {
  private final StringBuilder out = new StringBuilder(1 << 17);
  private final RunResult run;
  private final int[] rows;

  private PlotData(RunResult run) {
    this.run = run;
    this.rows = PlotRows.of(run.trace());
  }

  /** The document, safe inside a script element. */
  static String of(RunResult run) {
    return new PlotData(run).document();
  }

  private String document() {
    out.append("{\"end\":").append(end()).append(",\"limit\":");
    Decimal.append(out, run.profile().get(Parameter.CUT_OFF_LIMIT) / 1_000.0, 3);
    times();
    out.append(",\n\"lines\":{");
    for (Signal signal : PlotRows.CONTINUOUS) {
      head(signal, signal == PlotRows.CONTINUOUS.get(0));
      line(signal);
    }
    out.append("},\n\"steps\":{");
    for (Signal signal : PlotRows.DISCRETE) {
      head(signal, signal == PlotRows.DISCRETE.get(0));
      steps(signal);
    }
    out.append("},\n\"faults\":");
    words(Signal.FAULT.words());
    phases();
    marks();
    failures();
    return out.append("}").toString();
  }

  private long end() {
    Trace trace = run.trace();
    long traced = trace.rows() == 0 ? 0 : trace.millis(trace.rows() - 1);
    return Math.max(traced, run.about().durationMillis());
  }

  private void times() {
    out.append(",\n\"t\":[");
    long before = 0;
    for (int i = 0; i < rows.length; i++) {
      long now = run.trace().millis(rows[i]);
      comma(i).append(now - before);
      before = now;
    }
    out.append(']');
  }

  private void head(Signal signal, boolean first) {
    out.append(first ? "" : ",\n");
    ScriptJson.string(out, signal.key()).append(":{\"scale\":").append(scale(signal));
    out.append(",\"v\":[");
  }

  /** Steps of the whole numbers per unit: what a plot can show, and no digit that is only noise. */
  private static int scale(Signal signal) {
    return switch (signal.quantity()) {
      case TEMPERATURE -> 100;
      case VOLUME -> 1_000;
      case FRACTION -> 10_000;
      case POWER, TIME -> 10;
      case SWITCH, WORD, MARKS -> 1;
    };
  }

  private void line(Signal signal) {
    int scale = scale(signal);
    long before = 0;
    for (int i = 0; i < rows.length; i++) {
      double value = run.trace().value(rows[i], signal);
      if (Double.isFinite(value)) {
        long now = Math.round(value * scale);
        comma(i).append(now - before);
        before = now;
      } else {
        comma(i).append("null");
      }
    }
    out.append("]}");
  }

  private void steps(Signal signal) {
    int scale = scale(signal);
    long before = Long.MIN_VALUE;
    int pairs = 0;
    for (int i = 0; i < rows.length; i++) {
      long now = Math.round(run.trace().value(rows[i], signal) * scale);
      if (now != before) {
        comma(pairs).append(i).append(',').append(now);
        before = now;
        pairs++;
      }
    }
    out.append("]}");
  }

  private void words(List<String> words) {
    out.append('[');
    for (int i = 0; i < words.size(); i++) {
      ScriptJson.string(comma(i), Words.sentence(words.get(i)));
    }
    out.append(']');
  }

  private void phases() {
    out.append(",\n\"phases\":[");
    int i = 0;
    for (PhaseSpan span : run.phases()) {
      ScriptJson.string(comma(i).append('['), PhaseStays.key(span)).append(',');
      ScriptJson.string(out, Words.of(span.phase())).append(',').append(span.enteredMillis());
      out.append(',').append(span.lastedMillis()).append(']');
      i++;
    }
    out.append(']');
  }

  private void marks() {
    out.append(",\n\"marks\":[");
    int i = 0;
    for (Mark mark : run.marks()) {
      comma(i).append('[').append(mark.atMillis()).append(",\"").append(MarkList.key(mark.kind()));
      ScriptJson.string(out.append("\","), mark.text()).append(']');
      i++;
    }
    out.append(']');
  }

  private void failures() {
    out.append(",\n\"failures\":[");
    int i = 0;
    for (Verdict verdict : run.verdicts()) {
      if (verdict.outcome() == Verdict.Outcome.FAILED && verdict.momentMillis().isPresent()) {
        comma(i).append('[').append(verdict.momentMillis().getAsLong()).append(',');
        ScriptJson.string(out, verdict.name()).append(']');
        i++;
      }
    }
    out.append(']');
  }

  private StringBuilder comma(int before) {
    return before == 0 ? out : out.append(',');
  }
}
