package dev.tankwright.report.campaign;

import dev.tankwright.campaign.About;
import dev.tankwright.campaign.Axis;
import dev.tankwright.campaign.CampaignResult;
import dev.tankwright.campaign.CaseResult;
import dev.tankwright.campaign.CellSummary;
import dev.tankwright.campaign.Margin;
import dev.tankwright.report.text.CaseWords;
import dev.tankwright.report.text.Decimal;
import dev.tankwright.scenario.Verdict;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;

/**
 * A campaign's result as comma-separated values by RFC 4180, UTF-8, CR LF after each line: one
 * table of all cells and one of all cases. What does not exist is left empty. The same result gives
 * the same bytes.
 */
public final class CampaignCsv {
  private static final String LINE_END = "\r\n";
  private static final String CELLS =
      "fault,phase,cases,reached,detected,first_faults,reaction_min_ms,reaction_median_ms,"
          + "reaction_max_ms,outcome,failed,least_margin,margin_unit,margin_requirement,worst_case,"
          + "replay";

  private CampaignCsv() {}

  /** One line for each cell of the matrix, row by row. */
  public static byte[] cells(CampaignResult result) {
    StringBuilder out = new StringBuilder(1 << 14).append(CELLS).append(LINE_END);
    for (CellSummary cell : result.cells()) {
      line(out, cell, result.about());
    }
    return out.toString().getBytes(StandardCharsets.UTF_8);
  }

  private static void line(StringBuilder out, CellSummary cell, About about) {
    text(out, cell.cell().fault()).append(',').append(cell.cell().phase()).append(',');
    out.append(cell.cases()).append(',').append(cell.reached()).append(',');
    out.append(cell.detected()).append(',');
    text(out, CaseWords.firstFaults(cell)).append(',');
    number(out, cell.reaction().least()).append(',');
    number(out, cell.reaction().median()).append(',');
    number(out, cell.reaction().most()).append(',');
    out.append(cell.outcome()).append(',').append(cell.failed()).append(',');
    margin(out, cell.leastMargin()).append(',');
    out.append(cell.worstCase()).append(',');
    text(out, about.replayCommand(cell.worstCase())).append(LINE_END);
  }

  /** One line for each case, in the order of their numbers. */
  public static byte[] cases(CampaignResult result) {
    About about = result.about();
    StringBuilder out = new StringBuilder(1 << 20).append("case,fault,phase,scenario,");
    for (Axis axis : Axis.values()) {
      out.append(column(axis)).append(',');
    }
    out.append("seed,onset_ms,detected,reaction_ms,ended_in,outcome,least_margin,margin_unit,");
    out.append("margin_requirement,failed_requirements,not_exercised").append(LINE_END);
    for (CaseResult one : result.cases()) {
      line(out, one, about);
    }
    return out.toString().getBytes(StandardCharsets.UTF_8);
  }

  private static String column(Axis axis) {
    String name = axis.key().replace('-', '_');
    return switch (axis.unit()) {
      case "ms" -> name + "_ms";
      case "°C" -> name + "_degC";
      default -> name;
    };
  }

  private static void line(StringBuilder out, CaseResult one, About about) {
    out.append(one.number()).append(',');
    text(out, one.cell().fault()).append(',').append(one.cell().phase()).append(',');
    text(out, about.scenarios().get(one.base())).append(',');
    for (Axis axis : Axis.values()) {
      Decimal.append(out, one.setting().value(axis), axis.unit().equals("ms") ? 0 : 4).append(',');
    }
    out.append(one.setting().seed()).append(',');
    number(out, one.onsetMillis()).append(',');
    out.append(one.detected().map(Enum::name).orElse("")).append(',');
    number(out, one.reactionMillis()).append(',');
    out.append(one.ended().map(Enum::name).orElse("")).append(',');
    out.append(one.outcome()).append(',');
    margin(out, one.leastMargin(about.requirements())).append(',');
    text(out, names(one, Verdict.Outcome.FAILED, about)).append(',');
    text(out, names(one, Verdict.Outcome.NOT_EXERCISED, about)).append(LINE_END);
  }

  private static String names(CaseResult one, Verdict.Outcome outcome, About about) {
    List<String> names = one.names(outcome, about.requirements());
    return String.join("; ", names);
  }

  private static StringBuilder margin(StringBuilder out, Optional<Margin> margin) {
    if (margin.isEmpty()) {
      return out.append(",,");
    }
    Decimal.append(out, margin.get().value(), 4).append(',').append(margin.get().unit());
    return text(out.append(','), margin.get().requirement());
  }

  private static StringBuilder number(StringBuilder out, OptionalLong value) {
    return value.isPresent() ? out.append(value.getAsLong()) : out;
  }

  private static StringBuilder text(StringBuilder out, String text) {
    boolean plain = text.chars().noneMatch(c -> c == ',' || c == '"' || c == '\r' || c == '\n');
    return plain
        ? out.append(text)
        : out.append('"').append(text.replace("\"", "\"\"")).append('"');
  }
}
