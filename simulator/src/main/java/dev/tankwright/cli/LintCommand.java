package dev.tankwright.cli;

import dev.tankwright.scenario.Problem;
import dev.tankwright.scenario.ScenarioException;
import dev.tankwright.scenario.ScenarioReader;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine;

/** Checks scenario files without running them. */
@CommandLine.Command(
    name = "lint",
    description = "Check scenario files without running them.",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class)
final class LintCommand implements Callable<Integer> {
  @CommandLine.Spec private CommandLine.Model.CommandSpec spec;

  @CommandLine.Parameters(
      arity = "1..*",
      paramLabel = "FILE|FOLDER",
      description = "Scenario files, or folders of them.")
  private List<Path> named;

  @Override
  public Integer call() throws BadInputException {
    int code = ExitCode.HELD;
    for (ScenarioFiles.Found found : ScenarioFiles.find(named)) {
      code = Math.max(code, lint(found.path()));
    }
    return code;
  }

  private int lint(Path path) {
    PrintWriter out = spec.commandLine().getOut();
    try {
      List<Problem> warnings = ScenarioReader.lint(path).warnings();
      warnings.forEach(warning -> out.println("warning: " + warning));
      out.println(path + ": " + (warnings.isEmpty() ? "in order" : "readable, with warnings"));
      return ExitCode.HELD;
    } catch (ScenarioException e) {
      e.problems().forEach(problem -> spec.commandLine().getErr().println(problem));
      return ExitCode.BAD_INPUT;
    }
  }
}
