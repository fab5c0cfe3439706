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
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;

/**
 * A campaign's result as comma-separated values by RFC 4180, UTF-8, CR LF after each line: one
 * table of all cells and one of all cases. What does not exist is left empty. The same result gives
 * the same bytes.
 */
public final class CampaignCsv {
  private static final List<String> CELLS =
      List.of(
          "fault",
          "phase",
          "cases",
          "reached",
          "detected",
          "first_faults",
          "reaction_min_ms",
          "reaction_median_ms",
          "reaction_max_ms",
          "outcome",
          "failed",
          "least_margin",
          "margin_unit",
          "margin_requirement",
          "worst_case",
          "replay");

  private CampaignCsv() {}

  /** One line for each cell of the matrix, row by row. */
  public static byte[] cells(CampaignResult result) {
    List<List<?>> lines = new ArrayList<>();
    lines.add(CELLS);
    result.cells().forEach(cell -> lines.add(line(cell, result.about())));
    return document(lines);
  }

  private static List<?> line(CellSummary cell, About about) {
    List<Object> line = new ArrayList<>();
    line.add(cell.cell().fault());
    line.add(cell.cell().phase());
    line.add(cell.cases());
    line.add(cell.reached());
    line.add(cell.detected());
    line.add(CaseWords.firstFaults(cell));
    line.add(number(cell.reaction().least()));
    line.add(number(cell.reaction().median()));
    line.add(number(cell.reaction().most()));
    line.add(cell.outcome());
    line.add(cell.failed());
    line.addAll(margin(cell.leastMargin()));
    line.add(cell.worstCase());
    line.add(about.replayCommand(cell.worstCase()));
    return line;
  }

  /** One line for each case, in the order of their numbers. */
  public static byte[] cases(CampaignResult result) {
    About about = result.about();
    List<List<?>> lines = new ArrayList<>();
    lines.add(headings());
    result.cases().forEach(one -> lines.add(line(one, about)));
    return document(lines);
  }

  private static List<String> headings() {
    List<String> headings = new ArrayList<>(List.of("case", "fault", "phase", "scenario"));
    for (Axis axis : Axis.values()) {
      headings.add(column(axis));
    }
    headings.addAll(List.of("seed", "onset_ms", "detected", "reaction_ms", "ended_in", "outcome"));
    headings.addAll(List.of("least_margin", "margin_unit", "margin_requirement"));
    headings.addAll(List.of("failed_requirements", "not_exercised"));
    return headings;
  }

  private static String column(Axis axis) {
    String name = axis.key().replace('-', '_');
    return switch (axis.unit()) {
      case "ms" -> name + "_ms";
      case "°C" -> name + "_degC";
      default -> name;
    };
  }

  private static List<?> line(CaseResult one, About about) {
    List<Object> line = new ArrayList<>();
    line.add(one.number());
    line.add(one.cell().fault());
    line.add(one.cell().phase());
    line.add(about.scenarios().get(one.base()));
    for (Axis axis : Axis.values()) {
      line.add(Decimal.of(one.setting().value(axis), axis.unit().equals("ms") ? 0 : 4));
    }
    line.add(one.setting().seed());
    line.add(number(one.onsetMillis()));
    line.add(one.detected().map(Enum::name).orElse(""));
    line.add(number(one.reactionMillis()));
    line.add(one.ended().map(Enum::name).orElse(""));
    line.add(one.outcome());
    line.addAll(margin(one.leastMargin(about.requirements())));
    line.add(names(one, Verdict.Outcome.FAILED, about));
    line.add(names(one, Verdict.Outcome.NOT_EXERCISED, about));
    return line;
  }

  private static String names(CaseResult one, Verdict.Outcome outcome, About about) {
    return String.join("; ", one.names(outcome, about.requirements()));
  }

  /** Value, unit and requirement. */
  private static List<String> margin(Optional<Margin> margin) {
    return margin
        .map(m -> List.of(Decimal.of(m.value(), 4), m.unit(), m.requirement()))
        .orElse(List.of("", "", ""));
  }

  private static String number(OptionalLong value) {
    return value.isPresent() ? Long.toString(value.getAsLong()) : "";
  }

  private static byte[] document(List<List<?>> lines) {
    StringBuilder text = new StringBuilder(1 << 16);
    try (CSVPrinter csv = new CSVPrinter(text, CSVFormat.RFC4180)) {
      csv.printRecords(lines);
    } catch (IOException e) {
      throw new UncheckedIOException("A text in memory cannot be written", e);
    }
    return text.toString().getBytes(StandardCharsets.UTF_8);
  }
}
