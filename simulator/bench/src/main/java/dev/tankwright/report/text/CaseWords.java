package dev.tankwright.report.text;

import dev.tankwright.campaign.CaseOutcome;
import dev.tankwright.campaign.CellSummary;
import dev.tankwright.campaign.Margin;
import dev.tankwright.campaign.RequirementSummary;
import dev.tankwright.controller.board.Fault;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.stream.Collectors;

/** Cases, cells and requirements of a campaign in words: outcomes, counts, reactions. */
public final class CaseWords {
  private CaseWords() {}

  /** The outcome of a case or a cell in words. */
  public static String outcome(CaseOutcome outcome) {
    return switch (outcome) {
      case HELD -> "held";
      case FAILED -> "failed";
      case NOT_REACHED -> "not reached";
      case NOT_EXERCISED -> "not exercised";
    };
  }

  /** One requirement's counts, for example {@code held in 120 cases, failed in 2}. */
  public static String counts(RequirementSummary summary) {
    if (summary.isVacuous()) {
      return "exercised in no case";
    }
    String text = "held in " + number(summary.held()) + ", failed in " + number(summary.failed());
    return text + ", not exercised in " + number(summary.notExercised()) + " cases";
  }

  /** One cell's story, for example {@code 80 of 80 cases detected, median 12 ms}. */
  public static String story(CellSummary cell) {
    StringBuilder out = new StringBuilder();
    if (cell.failed() > 0) {
      out.append(number(cell.failed())).append(" failed; ");
    }
    out.append(number(cell.reached())).append(" of ").append(number(cell.cases()));
    out.append(" cases reached the phase; ").append(number(cell.detected())).append(" detected");
    if (cell.reaction().median().isPresent()) {
      out.append(", reaction ").append(millis(cell.reaction().least())).append(" / ");
      out.append(millis(cell.reaction().median())).append(" / ");
      out.append(millis(cell.reaction().most()));
    }
    return out.toString();
  }

  /** Which faults the controller raised, the most frequent first. */
  public static String faults(CellSummary cell) {
    List<String> parts = new ArrayList<>();
    cell.faults().entrySet().stream()
        .sorted((a, b) -> Integer.compare(b.getValue(), a.getValue()))
        .forEach(entry -> parts.add(fault(entry, cell)));
    return String.join(", ", parts);
  }

  /** For example {@code OVERSHOOT 12, SENSORS_DISAGREE 36}. */
  public static String firstFaults(CellSummary cell) {
    return cell.faults().entrySet().stream()
        .map(entry -> entry.getKey() + " " + entry.getValue())
        .collect(Collectors.joining(", "));
  }

  private static String fault(Map.Entry<Fault, Integer> entry, CellSummary cell) {
    String name = entry.getKey().name();
    return entry.getValue() == cell.reached() ? name : name + " in " + number(entry.getValue());
  }

  /** A reaction time: ms below one second, s below two minutes, else min:s. */
  public static String millis(OptionalLong time) {
    if (time.isEmpty()) {
      return "none";
    }
    long millis = time.getAsLong();
    if (millis < 1_000) {
      return millis + " ms";
    }
    if (millis < 120_000) {
      return Decimal.of(millis / 1_000.0, millis < 10_000 ? 2 : 1) + " s";
    }
    return millis / 60_000 + " min";
  }

  /** A count with unbreakable spaces between groups of three digits, from five digits on. */
  public static String number(int count) {
    String digits = Integer.toString(count);
    if (digits.length() < 5) {
      return digits;
    }
    StringBuilder out = new StringBuilder(digits);
    for (int at = digits.length() - 3; at > 0; at -= 3) {
      out.insert(at, '\u00A0');
    }
    return out.toString();
  }

  /** A margin in words, as print has it; a dash where there is none. */
  public static String margin(Optional<Margin> margin) {
    return margin.map(m -> Words.printed(Words.margin(m.value(), m.unit()))).orElse("\u2013");
  }
}
