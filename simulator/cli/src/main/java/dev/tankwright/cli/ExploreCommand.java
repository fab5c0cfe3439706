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

/** Explores every state of the controller and looks for a broken rule. */
@CommandLine.Command(
    name = "explore",
    description =
        "Visit every state that the controller can reach, with no faulty part, each one alone and"
            + " each two together, and look for a broken rule.",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    footer = {
      "",
      "Times are shortened to a few scans with their order kept; temperatures are a "
          + "few classes around the controller's limits. Each broken rule is written as a "
          + "scenario file that 'tankwright run' replays. Exit code 1 also when a set was "
          + "given up at --limit: nothing is proven then.",
      "A proof about logic is no certificate, and says nothing of real times and real parts."
    })
final class ExploreCommand implements Callable<Integer> {
  private final LongSupplier nanoseconds;

  @CommandLine.Spec private CommandLine.Model.CommandSpec spec;

  @CommandLine.Option(
      names = "--profile",
      paramLabel = "FILE",
      description =
          "The controller's limits, with the keys that stand under 'controller:' in a scenario."
              + " Default: the six-litre bench bath.")
  private Path profile;

  @CommandLine.Option(
      names = "--out",
      paramLabel = "DIR",
      defaultValue = "broken-rules",
      description =
          "Folder for the scenario files of broken rules; made only when there are any. Default:"
              + " ${DEFAULT-VALUE}.")
  private Path out;

  @CommandLine.Option(
      names = "--limit",
      paramLabel = "N",
      defaultValue = "20000000",
      description = "Give a set up at so many states. Default: ${DEFAULT-VALUE}.")
  private int limit;

  @CommandLine.Option(
      names = "--threads",
      paramLabel = "N",
      defaultValue = "2",
      description = "How many sets at a time. The result is the same. Default: ${DEFAULT-VALUE}.")
  private int threads;

  @CommandLine.Option(
      names = "--quick",
      description = "Leave out the pairs of faulty parts and the finer classes.")
  private boolean quick;

  @CommandLine.Option(
      names = "--proven",
      paramLabel = "FILE",
      description =
          "Puts each set that was explored to its end without a broken rule down in this file, and"
              + " leaves out those that stand there already for the same controller, rules and"
              + " limits. So a long proof can be put together of several runs.")
  private Path proven;

  @CommandLine.Option(
      names = "--faulty",
      paramLabel = "PART",
      split = ",",
      description =
          "Explore this set of faulty parts alone, such as control-sensor,counter; 'none' is the"
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
