package dev.tankwright.report;

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

/** A campaign in words: outcomes, counts, reactions. */
final class CampaignWords {
  private CampaignWords() {}

  /** The outcome of a case or a cell in words. */
  static String outcome(CaseOutcome outcome) {
    return switch (outcome) {
      case HELD -> "held";
      case FAILED -> "failed";
      case NOT_REACHED -> "not reached";
      case NOT_EXERCISED -> "not exercised";
    };
  }

  /** The whole campaign in a few words. */
  static String headline(CampaignResults results) {
    int failed = results.count(CaseOutcome.FAILED);
    if (failed > 0) {
      return number(failed) + " of " + number(results.cases()) + " cases failed";
    }
    if (!results.isComplete()) {
      return number(results.cases()) + " of " + number(results.wanted()) + " cases were run";
    }
    int held = results.count(CaseOutcome.HELD);
    return held == results.cases()
        ? "All " + number(held) + " cases held"
        : number(held) + " of " + number(results.cases()) + " cases held";
  }

  /** What the headline leaves out, or empty. */
  static String rest(CampaignResults results) {
    List<String> parts = new ArrayList<>();
    if (results.count(CaseOutcome.FAILED) > 0) {
      parts.add(number(results.count(CaseOutcome.HELD)) + " held");
    }
    for (CaseOutcome outcome :
        new CaseOutcome[] {CaseOutcome.NOT_REACHED, CaseOutcome.NOT_EXERCISED}) {
      if (results.count(outcome) > 0) {
        parts.add(number(results.count(outcome)) + " " + outcome(outcome));
      }
    }
    if (!results.isComplete()) {
      parts.add(number(results.wanted() - results.cases()) + " never run");
    }
    return String.join(", ", parts);
  }

  /** One requirement's counts, for example {@code held in 120 cases, failed in 2}. */
  static String counts(RequirementSummary summary) {
    if (summary.isVacuous()) {
      return "put to the test in no case";
    }
    String text = "held in " + number(summary.held()) + ", failed in " + number(summary.failed());
    return text + ", not exercised in " + number(summary.notExercised()) + " cases";
  }

  /** One cell's story, for example {@code 80 of 80 cases detected, median 12 ms}. */
  static String story(CellSummary cell) {
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
  static String faults(CellSummary cell) {
    List<String> parts = new ArrayList<>();
    cell.faults().entrySet().stream()
        .sorted((a, b) -> Integer.compare(b.getValue(), a.getValue()))
        .forEach(entry -> parts.add(fault(entry, cell)));
    return String.join(", ", parts);
  }

  private static String fault(Map.Entry<Fault, Integer> entry, CellSummary cell) {
    String name = entry.getKey().name();
    return entry.getValue() == cell.reached() ? name : name + " in " + number(entry.getValue());
  }

  /** A reaction time: ms below one second, s below two minutes, else min:s. */
  static String millis(OptionalLong time) {
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
  static String number(int count) {
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

  /** Whether the whole campaign was run, not a share of it. */
  static String share(CampaignResults results) {
    String shard = results.about().shard().toString();
    return shard.equals("1/1") ? "whole campaign" : "share " + shard;
  }

  /** A margin in words, as print has it; a dash where there is none. */
  static String margin(Optional<Margin> margin) {
    return margin
        .map(m -> RequirementTable.printed(Words.margin(m.value(), m.unit())))
        .orElse("\u2013");
  }
}
