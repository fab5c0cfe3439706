package dev.tankwright.report.run;

import dev.tankwright.report.results.EventsSeen;
import dev.tankwright.report.results.Tally;
import dev.tankwright.report.text.Ansi;
import dev.tankwright.report.text.Columns;
import dev.tankwright.report.text.Decimal;
import dev.tankwright.report.text.Words;
import dev.tankwright.scenario.Verdict;
import dev.tankwright.scenario.run.PhaseSpan;
import dev.tankwright.scenario.run.RunResult;
import java.util.List;

/**
 * One run in a terminal, at most {@value #WIDTH} columns wide: one line per requirement with its
 * margin and moment, the stays in phases, and one final line. Beside ASCII there is only the degree
 * sign and what the scenario file brings along.
 */
public final class ConsoleSummary {
  /** Widest line, columns. */
  static final int WIDTH = 100;

  private final StringBuilder out = new StringBuilder(4096);
  private final boolean colour;

  private ConsoleSummary(boolean colour) {
    this.colour = colour;
  }

  /**
   * The whole text, every line ended by a line feed.
   *
   * @param run what the run left behind
   * @param seen what became of its events
   * @param colour whether outcomes are coloured too, by ECMA-48 sequences
   */
  public static String of(RunResult run, EventsSeen seen, boolean colour) {
    ConsoleSummary summary = new ConsoleSummary(colour);
    summary.wrapped(run.about().title(), 0);
    summary.out.append('\n');
    summary.verdicts(run.verdicts());
    summary.phases(run.phases());
    summary.finalLine(run, seen);
    return summary.out.toString();
  }

  private void verdicts(List<Verdict> verdicts) {
    int outcomes = 0;
    int ids = 0;
    int names = 0;
    int margins = 0;
    for (Verdict verdict : verdicts) {
      outcomes = Math.max(outcomes, word(verdict).length());
      ids = Math.max(ids, verdict.id().length());
      names = Math.max(names, Columns.width(verdict.name()));
      margins = Math.max(margins, margin(verdict).length());
    }
    int before = outcomes + 2 + (ids == 0 ? 0 : ids + 2);
    int room = Math.max(20, Math.min(names, WIDTH - before - 2 - margins));
    for (Verdict verdict : verdicts) {
      line(verdict, outcomes, ids, room);
    }
    out.append('\n');
  }

  private void line(Verdict verdict, int outcomes, int ids, int room) {
    String word = word(verdict);
    out.append(Ansi.paint(verdict.outcome(), word, colour));
    Columns.spaces(out, outcomes + 2 - word.length());
    int indent = outcomes + 2;
    if (ids > 0) {
      Columns.padded(out, verdict.id(), ids + 2);
      indent += ids + 2;
    }
    List<String> name = Columns.wrap(Columns.clean(verdict.name()), room);
    Columns.padded(out, name.get(0), room + 2);
    out.append(margin(verdict));
    Columns.endLine(out);
    for (String rest : name.subList(1, name.size())) {
      Columns.spaces(out, indent);
      out.append(rest).append('\n');
    }
    if (verdict.outcome() != Verdict.Outcome.HELD) {
      wrapped(verdict.detail(), indent);
    }
  }

  private static String word(Verdict verdict) {
    return verdict.outcome() == Verdict.Outcome.FAILED
        ? "FAILED"
        : Words.outcome(verdict.outcome());
  }

  private static String margin(Verdict verdict) {
    StringBuilder text = new StringBuilder();
    verdict
        .margin()
        .ifPresent(m -> text.append("margin ").append(Words.margin(m, verdict.marginUnit())));
    verdict
        .momentMillis()
        .ifPresent(m -> text.append(text.isEmpty() ? "at " : " at ").append(Words.moment(m)));
    return text.toString();
  }

  private void phases(List<PhaseSpan> phases) {
    out.append("phase         entered at      lasted    solution at the end\n");
    for (PhaseSpan span : phases) {
      Columns.padded(out, Words.of(span.phase()), 12);
      Columns.right(out, Words.moment(span.enteredMillis()), 12);
      Columns.right(out, Words.moment(span.lastedMillis()), 12);
      Columns.right(out, Decimal.of(span.endCelsius(), 1), 20);
      out.append(" \u00B0C\n");
    }
    out.append('\n');
  }

  private void finalLine(RunResult run, EventsSeen seen) {
    Tally tally = Tally.of(run.verdicts());
    String rest = tally.rest().isEmpty() ? "" : " (" + tally.rest() + ")";
    out.append(Ansi.paint(tally.outcome(), tally.headline() + rest, colour));
    out.append(seen.published() ? "; events: " + DeliverySection.inShort(seen) : "").append(".\n");
  }

  private void wrapped(String text, int indent) {
    for (String line : Columns.wrap(Columns.clean(text), WIDTH - indent)) {
      Columns.spaces(out, indent);
      out.append(line);
      Columns.endLine(out);
    }
  }
}
