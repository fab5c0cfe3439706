package dev.tankwright.report.text;

import dev.tankwright.campaign.CampaignResult;
import dev.tankwright.campaign.CaseOutcome;
import dev.tankwright.campaign.Cell;
import dev.tankwright.campaign.CellSummary;
import dev.tankwright.campaign.Margin;
import dev.tankwright.campaign.Required;
import dev.tankwright.campaign.RequirementSummary;
import dev.tankwright.campaign.Shard;
import dev.tankwright.controller.board.Phase;
import java.util.Locale;
import java.util.Optional;

/** A campaign's result in lines for a terminal. */
public final class CampaignText {
  private static final int WIDE = 18;
  private static final long SECOND = 1_000;
  private static final long LONG = 10_000;

  private final CampaignResult result;
  private final StringBuilder out = new StringBuilder(1 << 13);

  private CampaignText(CampaignResult result) {
    this.result = result;
  }

  /**
   * The matrix, what failed, what showed nothing, and how to replay.
   *
   * @param file the campaign's file as the command line named it
   */
  public static String of(CampaignResult result, String file) {
    CampaignText text = new CampaignText(result);
    text.matrix();
    text.requirements();
    text.troubles();
    text.end(file);
    return text.out.toString();
  }

  private void matrix() {
    int left = result.about().faults().stream().mapToInt(String::length).max().orElse(0) + 2;
    out.append(pad("", left));
    result.about().phases().forEach(phase -> out.append(pad(phase.name(), WIDE)));
    out.append('\n');
    for (String fault : result.about().faults()) {
      out.append(pad(fault, left));
      for (Phase phase : result.about().phases()) {
        Optional<CellSummary> cell = result.cell(new Cell(fault, phase));
        out.append(pad(cell.map(CampaignText::cell).orElse(""), WIDE));
      }
      out.append('\n');
    }
    out.append("In a cell: longest time until the controller raised a fault, or the outcome;\n");
    out.append("then the number of its worst case. \"-\": held, and no fault was raised.\n");
  }

  private static String pad(String text, int width) {
    return text.length() >= width ? text + " " : text + " ".repeat(width - text.length());
  }

  private static String cell(CellSummary cell) {
    return inBrief(cell) + " #" + cell.worstCase();
  }

  private static String inBrief(CellSummary cell) {
    if (cell.outcome() != CaseOutcome.HELD) {
      return cell.outcome() == CaseOutcome.FAILED
          ? "FAILED " + cell.failed()
          : CaseWords.outcome(cell.outcome());
    }
    if (cell.detected() == 0) {
      return "-";
    }
    String time = time(cell.reaction().most().orElse(0));
    return cell.detected() == cell.reached()
        ? time
        : time + " " + cell.detected() + "/" + cell.reached();
  }

  private static String time(long millis) {
    if (millis < SECOND) {
      return millis + "ms";
    }
    double seconds = millis / (double) SECOND;
    return String.format(Locale.ROOT, millis < LONG ? "%.2fs" : "%.0fs", seconds);
  }

  /** What a cell has come to, in one line. */
  public static String account(CellSummary cell) {
    StringBuilder text = new StringBuilder(200);
    text.append(cell.cases()).append(" cases, ").append(cell.reached()).append(" reached, ");
    text.append(cell.failed()).append(" failed, ").append(cell.detected()).append(" detected");
    if (cell.detected() > 0) {
      text.append(" after ").append(time(cell.reaction().least().orElse(0)));
      text.append(" to ").append(time(cell.reaction().most().orElse(0)));
      text.append(" (").append(CaseWords.firstFaults(cell)).append(')');
    }
    cell.leastMargin().ifPresent(margin -> text.append("; least margin ").append(of(margin)));
    return text.toString();
  }

  private static String of(Margin margin) {
    return Words.margin(margin.value(), margin.unit()) + " of '" + margin.requirement() + "'";
  }

  /** What became of a requirement, in one line. */
  public static String account(RequirementSummary summary) {
    StringBuilder text = new StringBuilder(100);
    text.append("held in ").append(summary.held()).append(" cases, failed in ");
    text.append(summary.failed()).append(", not exercised in ").append(summary.notExercised());
    summary
        .leastMargin()
        .ifPresent(m -> text.append("; least margin ").append(Words.margin(m.value(), m.unit())));
    summary.worstCase().ifPresent(number -> text.append(", case #").append(number));
    return text.toString();
  }

  private void requirements() {
    out.append('\n');
    for (RequirementSummary summary : result.requirements()) {
      out.append(summary.failed() > 0 ? "FAILED  " : summary.isVacuous() ? "VACUOUS " : "held    ");
      Required required = summary.required();
      out.append(required.id().isEmpty() ? "" : required.id() + " ").append(required.name());
      out.append(": ").append(account(summary)).append('\n');
    }
  }

  private void troubles() {
    for (CellSummary cell : result.cells()) {
      boolean failed = cell.outcome() == CaseOutcome.FAILED;
      if (failed || cell.outcome() == CaseOutcome.NOT_REACHED) {
        out.append(failed ? "\nFAILED " : "\nnot reached ").append(cell.cell());
        out.append(": ").append(account(cell));
        out.append("\n  ").append(result.about().replayCommand(cell.worstCase())).append('\n');
      }
    }
  }

  private void end(String file) {
    int all = result.about().shard().sizeOf(result.about().cases());
    out.append('\n').append(result.cases().size()).append(" of ").append(all).append(" cases");
    if (!result.about().shard().equals(Shard.WHOLE)) {
      out.append(" of shard ").append(result.about().shard());
    }
    for (CaseOutcome outcome : CaseOutcome.values()) {
      out.append(", ").append(result.count(outcome)).append(' ').append(CaseWords.outcome(outcome));
    }
    out.append("\nreplay any case: tankwright campaign ").append(file).append(" --replay NUMBER\n");
  }
}
