package dev.tankwright.report.statechart;

import dev.tankwright.controller.sequence.PhaseTable;
import dev.tankwright.controller.sequence.Transition;
import java.io.IOException;
import java.io.UncheckedIOException;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;

/** The controller's table of phases in forms that other programs read. */
public final class PhaseChart {
  private PhaseChart() {}

  /** A Mermaid state diagram; one line per transition, in the order of the table. */
  public static String mermaid() {
    StringBuilder chart = new StringBuilder("stateDiagram-v2\n  [*] --> SELF_TEST\n");
    for (Transition line : PhaseTable.lines()) {
      chart.append("  ").append(line.from()).append(" --> ").append(line.to());
      chart.append(" : ").append(line.trigger()).append('\n');
    }
    return chart.toString();
  }

  /** CSV by RFC 4180 with the columns from, trigger, to and why. */
  public static String csv() {
    StringBuilder table = new StringBuilder(1 << 13);
    try (CSVPrinter csv = new CSVPrinter(table, CSVFormat.RFC4180)) {
      csv.printRecord("from", "trigger", "to", "why");
      for (Transition line : PhaseTable.lines()) {
        csv.printRecord(line.from(), line.trigger(), line.to(), line.why());
      }
    } catch (IOException e) {
      throw new UncheckedIOException("A text in memory cannot be written", e);
    }
    return table.toString();
  }
}
