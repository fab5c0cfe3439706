package dev.tankwright.cli;

import dev.tankwright.report.run.RunFolder;
import dev.tankwright.report.summary.SummaryFolder;
import dev.tankwright.scenario.Scenario;
import dev.tankwright.scenario.file.ScenarioReader;
import dev.tankwright.scenario.yaml.ScenarioException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine;

/** Runs scenarios and judges them. */
@CommandLine.Command(
    name = "run",
    description = "Run scenarios in simulated time and judge their requirements.",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    footer = {
      "",
      "Without --broker the run starts a broker of its own on a free loopback port.",
      "When both a requirement and the broker fail, the exit code is that of the " + "requirement."
    })
final class RunCommand implements Callable<Integer> {
  @CommandLine.Spec private CommandLine.Model.CommandSpec spec;

  @CommandLine.Parameters(
      arity = "1..*",
      paramLabel = "FILE|FOLDER",
      description = "Scenario files, or folders of them.")
  private List<Path> named;

  @CommandLine.Option(
      names = "--out",
      paramLabel = "DIR",
      description =
          "Folder for report.html, summary.html, result.json, junit.xml, trace.csv, trace.vcd,"
              + " events.ndjson, record.json and SHA256SUMS; a subfolder for each scenario, and a"
              + " summary of all, when there are several.")
  private Path out;

  @CommandLine.Option(
      names = "--seed",
      paramLabel = "N",
      description = "Random seed, instead of the one in the file.")
  private Long seed;

  @CommandLine.Mixin private BrokerOptions broker;

  @CommandLine.Option(
      names = "--outbox",
      paramLabel = "FILE",
      description =
          "Keep the events of one scenario in this file until the broker has acknowledged them,"
              + " and continue the numbering of those in it. Default: a temporary file.")
  private Path outbox;

  @CommandLine.Option(names = "--quiet", description = "Print only failures and errors.")
  private boolean quiet;

  @Override
  public Integer call() throws BadInputException {
    List<ScenarioFiles.Found> found = ScenarioFiles.find(named);
    if (outbox != null && found.size() > 1) {
      throw new BadInputException(
          "tankwright: --outbox: an outbox belongs to one device, and %d scenarios are given; name one scenario"
              .formatted(found.size()));
    }
    try (Deliveries deliveries = Deliveries.open(broker, outbox)) {
      List<Scenario> scenarios = read(found);
      List<RunFolder> folders = folders(found);
      Console console = new Console(spec.commandLine(), quiet);
      int code = ExitCode.HELD;
      for (int i = 0; i < scenarios.size(); i++) {
        OneRun run = new OneRun(scenarios.get(i), deliveries, console);
        code = ExitCode.worse(code, run.run(folders.isEmpty() ? null : folders.get(i)));
      }
      if (folders.size() > 1) {
        SummaryFolder.writeRuns(out, found.stream().map(ScenarioFiles.Found::label).toList());
      }
      return code;
    }
  }

  /** Reads every file before anything is run, and reports the problems of all of them. */
  private List<Scenario> read(List<ScenarioFiles.Found> found) throws BadInputException {
    List<Scenario> scenarios = new ArrayList<>();
    List<String> problems = new ArrayList<>();
    Warnings warnings = new Warnings();
    for (ScenarioFiles.Found file : found) {
      try {
        Scenario scenario = ScenarioReader.read(file.path(), warnings);
        scenarios.add(seed == null ? scenario : scenario.withSeed(seed));
      } catch (ScenarioException e) {
        problems.add(e.getMessage());
      } catch (IllegalArgumentException e) {
        throw new BadInputException("tankwright: --seed: " + e.getMessage());
      }
    }
    if (!problems.isEmpty()) {
      throw new BadInputException(String.join("\n", problems));
    }
    warnings.tell(spec.commandLine().getErr());
    return scenarios;
  }

  private List<RunFolder> folders(List<ScenarioFiles.Found> found) {
    if (out == null) {
      return List.of();
    }
    if (found.size() == 1) {
      return List.of(new RunFolder(out));
    }
    return found.stream()
        .map(file -> new RunFolder(out.resolve(file.label()), file.label()))
        .toList();
  }
}
