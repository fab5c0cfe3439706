package dev.tankwright.cli;

import dev.tankwright.report.statechart.PhaseChart;
import dev.tankwright.report.statechart.StateChartXml;
import java.util.Locale;
import java.util.concurrent.Callable;
import picocli.CommandLine;

/** Prints the state transition table. */
@CommandLine.Command(
    name = "phases",
    description = "Print the controller's state transition table.",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class)
final class PhasesCommand implements Callable<Integer> {
  enum Form {
    MERMAID,
    CSV,
    SCXML;

    @Override
    public String toString() {
      return name().toLowerCase(Locale.ROOT);
    }
  }

  @CommandLine.Spec private CommandLine.Model.CommandSpec spec;

  @CommandLine.Option(
      names = "--as",
      defaultValue = "mermaid",
      paramLabel = "mermaid|csv|scxml",
      description =
          "Format of the table: a Mermaid state diagram, CSV, or State Chart XML (W3C SCXML 1.0)."
              + " Default: ${DEFAULT-VALUE}.")
  private Form form;

  @Override
  public Integer call() {
    String table =
        switch (form) {
          case MERMAID -> PhaseChart.mermaid();
          case CSV -> PhaseChart.csv();
          case SCXML -> StateChartXml.document();
        };
    spec.commandLine().getOut().print(table);
    return ExitCode.HELD;
  }
}
