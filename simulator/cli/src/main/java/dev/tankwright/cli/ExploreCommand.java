package dev.tankwright.cli;

import dev.tankwright.controller.board.DeviceProfile;
import dev.tankwright.explore.Exploration;
import dev.tankwright.explore.FaultySet;
import dev.tankwright.explore.ProofFingerprint;
import dev.tankwright.explore.SetResult;
import dev.tankwright.explore.Violation;
import dev.tankwright.report.exploration.BrokenRuleFolder;
import dev.tankwright.report.exploration.ProvenSets;
import dev.tankwright.scenario.file.LimitsReader;
import dev.tankwright.scenario.yaml.ScenarioException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.function.LongSupplier;
import picocli.CommandLine;

/** Explores every state of the controller and looks for a violated rule. */
@CommandLine.Command(
    name = "explore",
    description =
        "Visit every state that the controller can reach, without faulty parts, with each single"
            + " one and with each pair, and look for a violated rule.",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    footer = {
      "",
      "Times are shortened to a few scans, in the same order; temperatures are a few "
          + "classes around the controller's limits. Each violated rule is written as a "
          + "scenario file that 'tankwright run' replays. Exit code 1 also when a set was "
          + "stopped at --limit: nothing is proven then.",
      "A proof about logic is not a certificate, and says nothing about real times and real "
          + "parts."
    })
final class ExploreCommand implements Callable<Integer> {
  private final LongSupplier nanoseconds;

  @CommandLine.Spec private CommandLine.Model.CommandSpec spec;

  @CommandLine.Option(
      names = "--profile",
      paramLabel = "FILE",
      description =
          "The controller's parameters, with the keys of 'controller:' in a scenario."
              + " Default: the six-litre bench bath.")
  private Path profile;

  @CommandLine.Option(
      names = "--out",
      paramLabel = "DIR",
      defaultValue = "broken-rules",
      description =
          "Folder for the scenario files of violated rules; created only if there are any. Default:"
              + " ${DEFAULT-VALUE}.")
  private Path out;

  @CommandLine.Option(
      names = "--limit",
      paramLabel = "N",
      defaultValue = "20000000",
      description = "Stop a set after N states. Default: ${DEFAULT-VALUE}.")
  private int limit;

  @CommandLine.Option(
      names = "--threads",
      paramLabel = "N",
      defaultValue = "2",
      description =
          "Sets explored in parallel; does not change the result. Default: ${DEFAULT-VALUE}.")
  private int threads;

  @CommandLine.Option(
      names = "--quick",
      description = "Omit the pairs of faulty parts and the finer classes.")
  private boolean quick;

  @CommandLine.Option(
      names = "--proven",
      paramLabel = "FILE",
      description =
          "Record each set that was explored completely without a violation in this file, and skip"
              + " those recorded for the same controller, rules and limits. So a long proof can"
              + " be made in several runs.")
  private Path proven;

  @CommandLine.Option(
      names = "--faulty",
      paramLabel = "PART",
      split = ",",
      description =
          "Explore only this set of faulty parts, such as control-sensor,counter; 'none' is the"
              + " set without any.")
  private List<String> faulty = List.of();

  /** Measures by the machine's own clock. */
  ExploreCommand() {
    this(System::nanoTime);
  }

  /** Measures by the given clock, ns. */
  ExploreCommand(LongSupplier nanoseconds) {
    this.nanoseconds = nanoseconds;
  }

  @Override
  public Integer call() throws BadInputException {
    require(limit >= 1, "--limit", limit);
    require(threads >= 1, "--threads", threads);
    DeviceProfile limits = limits();
    List<FaultySet> plans = plans();
    try (ExplorationSession session = session(limits)) {
      return verdict(session.explore(plans, threads), session.shortened());
    }
  }

  private ExplorationSession session(DeviceProfile limits) throws BadInputException {
    Exploration exploration = new Exploration(limits, limit);
    return new ExplorationSession(exploration, proven(limits), nanoseconds, spec.commandLine());
  }

  private ProvenSets proven(DeviceProfile limits) throws BadInputException {
    try {
      return proven == null ? null : ProvenSets.open(proven, ProofFingerprint.of(limits));
    } catch (IllegalArgumentException e) {
      throw new BadInputException("tankwright: --proven: " + e.getMessage());
    }
  }

  private List<FaultySet> plans() throws BadInputException {
    if (faulty.isEmpty()) {
      return quick ? FaultySet.quick() : FaultySet.whole();
    }
    try {
      return List.of(FaultySet.of(faulty));
    } catch (IllegalArgumentException e) {
      throw new BadInputException("tankwright: --faulty: " + e.getMessage());
    }
  }

  private int verdict(List<SetResult> results, DeviceProfile shortened) {
    List<Violation> violations = new ArrayList<>();
    results.forEach(result -> violations.addAll(result.violations()));
    if (!violations.isEmpty()) {
      for (Path file : BrokenRuleFolder.write(out, violations, shortened)) {
        spec.commandLine().getOut().println("written: " + file);
      }
    }
    boolean complete = results.stream().allMatch(SetResult::complete);
    return complete && violations.isEmpty() ? ExitCode.HELD : ExitCode.FAILED;
  }

  private DeviceProfile limits() throws BadInputException {
    if (profile == null) {
      return DeviceProfile.sixLitre();
    }
    try {
      return LimitsReader.read(profile);
    } catch (ScenarioException e) {
      throw new BadInputException(e.getMessage());
    }
  }

  private static void require(boolean holds, String option, int value) throws BadInputException {
    if (!holds) {
      throw new BadInputException(
          "tankwright: " + option + " is " + value + "; it must be at least 1");
    }
  }
}
