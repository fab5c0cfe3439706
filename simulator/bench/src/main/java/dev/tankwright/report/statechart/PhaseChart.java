package dev.tankwright.report.statechart;

import dev.tankwright.controller.sequence.PhaseTable;
import dev.tankwright.controller.sequence.Transition;

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
    StringBuilder table = new StringBuilder("from,trigger,to,why\r\n");
    for (Transition line : PhaseTable.lines()) {
      table.append(line.from()).append(',').append(line.trigger()).append(',');
      table.append(line.to()).append(",\"").append(line.why()).append("\"\r\n");
    }
    return table.toString();
  }
}
