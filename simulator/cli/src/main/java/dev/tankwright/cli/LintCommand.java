package dev.tankwright.cli;

import dev.tankwright.scenario.lint.LintRun;
import dev.tankwright.scenario.lint.ScenarioLint;
import dev.tankwright.scenario.yaml.Problem;
import dev.tankwright.scenario.yaml.ScenarioException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.concurrent.Callable;
import picocli.CommandLine;

/** Checks scenario files. */
@CommandLine.Command(
    name = "lint",
    description = "Check scenario files, and run them to find entries without effect.",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class)
final class LintCommand implements Callable<Integer> {
  @CommandLine.Spec private CommandLine.Model.CommandSpec spec;

  @CommandLine.Parameters(
      arity = "1..*",
      paramLabel = "FILE|FOLDER",
      description = "Scenario files, or folders of them.")
  private List<Path> named;

  @CommandLine.Option(names = "--no-run", description = "Check the files without running them.")
  private boolean noRun;

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
      ScenarioLint.Lint lint = ScenarioLint.of(path);
      List<Problem> warnings = new ArrayList<>(lint.warnings());
      if (!noRun) {
        addNew(warnings, LintRun.warnings(path.toString(), lint.scenario()));
      }
      warnings.forEach(warning -> out.println("warning: " + warning));
      out.println(path + ": " + verdict(warnings.size()));
      return ExitCode.HELD;
    } catch (ScenarioException e) {
      e.problems().forEach(problem -> spec.commandLine().getErr().println(problem));
      return ExitCode.BAD_INPUT;
    }
  }

  private static String verdict(int warnings) {
    return switch (warnings) {
      case 0 -> "valid";
      case 1 -> "valid, 1 warning";
      default -> "valid, " + warnings + " warnings";
    };
  }

  /** A place that has a warning already gets none from the run. */
  private static void addNew(List<Problem> warnings, List<Problem> shown) {
    Set<String> known = new HashSet<>();
    warnings.forEach(warning -> known.add(place(warning)));
    shown.stream().filter(warning -> !known.contains(place(warning))).forEach(warnings::add);
    warnings.sort(Problem.ORDER);
  }

  private static String place(Problem problem) {
    return problem.file() + ":" + problem.line() + ":" + problem.column();
  }
}
