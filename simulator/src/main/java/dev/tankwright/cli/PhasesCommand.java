package dev.tankwright.cli;

import dev.tankwright.report.PhaseChart;
import java.util.Locale;
import java.util.concurrent.Callable;
import picocli.CommandLine;

/** Prints the table of phases. */
@CommandLine.Command(
    name = "phases",
    description = "Print the controller's table of phases.",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class)
final class PhasesCommand implements Callable<Integer> {
  enum Form {
    MERMAID,
    CSV;

    @Override
    public String toString() {
      return name().toLowerCase(Locale.ROOT);
    }
  }

  @CommandLine.Spec private CommandLine.Model.CommandSpec spec;

  @CommandLine.Option(
      names = "--as",
      defaultValue = "mermaid",
      paramLabel = "mermaid|csv",
      description =
          "Form of the table: a Mermaid state diagram, or CSV. Default: ${DEFAULT-VALUE}.")
  private Form form;

  @Override
  public Integer call() {
    spec.commandLine().getOut().print(form == Form.CSV ? PhaseChart.csv() : PhaseChart.mermaid());
    return ExitCode.HELD;
  }
}
