package dev.tankwright.cli;

import dev.tankwright.campaign.PlanException;
import dev.tankwright.campaign.Replay;
import dev.tankwright.hunt.Hunt;
import dev.tankwright.hunt.HuntCsv;
import dev.tankwright.hunt.HuntFile;
import dev.tankwright.hunt.HuntPlot;
import dev.tankwright.hunt.HuntResult;
import dev.tankwright.hunt.HuntText;
import dev.tankwright.hunt.Method;
import dev.tankwright.hunt.Space;
import dev.tankwright.report.campaign.CampaignFolder;
import dev.tankwright.scenario.Verdict;
import dev.tankwright.scenario.quantity.Plain;
import dev.tankwright.scenario.yaml.ScenarioException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine;

/** Searches for the run that brings a requirement closest to failing. */
@CommandLine.Command(
    name = "hunt",
    description =
        "Search for the moments and tolerances that bring a requirement closest to failing.",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    footer = {
      "",
      "DIR holds evaluations.csv, margin.svg and worst.yaml, which 'tankwright run' replays.",
      "In a scenario, the moments of its entries and usual tolerances are searched; "
          + "in a campaign, the cells of its matrix over the campaign's tolerances. A run "
          + "that does not exercise the requirement counts as neither good nor bad.",
      "The result is the worst case found, not the worst case there is."
    })
final class HuntCommand implements Callable<Integer> {
  private static final int MOST_SECONDS = 3600;
  private static final int MOST_RUNS = 1_000_000;
  private static final int MILLI = 1000;

  @CommandLine.Spec private CommandLine.Model.CommandSpec spec;

  @CommandLine.Parameters(paramLabel = "FILE", description = "A scenario or campaign file.")
  private Path file;

  @CommandLine.Option(
      names = "--requirement",
      required = true,
      paramLabel = "NAME",
      description = "Name of the requirement, as in the file.")
  private String requirement;

  @CommandLine.Option(
      names = "--budget",
      paramLabel = "N",
      defaultValue = "300",
      description = "Number of runs. Default: ${DEFAULT-VALUE}.")
  private int budget;

  @CommandLine.Option(
      names = "--seed",
      paramLabel = "N",
      defaultValue = "1",
      description = "Random seed of the search; runs keep their own. Default: ${DEFAULT-VALUE}.")
  private long seed;

  @CommandLine.Option(
      names = "--method",
      paramLabel = "cma-es|random",
      defaultValue = "cma-es",
      description = "Search method. Default: ${DEFAULT-VALUE}.")
  private String method;

  @CommandLine.Option(
      names = "--fault",
      paramLabel = "NAME",
      description = "In a campaign, only this fault. Default: all.")
  private String fault;

  @CommandLine.Option(
      names = "--phase",
      paramLabel = "PHASE",
      description = "In a campaign, only this phase. Default: all.")
  private String phase;

  @CommandLine.Option(
      names = "--shift",
      paramLabel = "SECONDS",
      defaultValue = "10",
      description =
          "In a scenario, how far an entry may move either way. Default: ${DEFAULT-VALUE}.")
  private int shift;

  @CommandLine.Option(
      names = "--out",
      paramLabel = "DIR",
      description = "Folder for the results. Default: print only.")
  private Path out;

  @CommandLine.Option(
      names = "--quiet",
      description = "Print only errors, and the result if the requirement failed.")
  private boolean quiet;

  @Override
  public Integer call() throws BadInputException {
    Method chosen = method();
    require(
        budget >= 1 && budget <= MOST_RUNS,
        "--budget is " + budget + "; it must be from 1 to " + MOST_RUNS);
    require(
        shift >= 0 && shift <= MOST_SECONDS,
        "--shift is " + shift + "; it must be from 0 to " + MOST_SECONDS + " seconds");
    List<Space> spaces;
    Warnings warnings = new Warnings();
    try {
      spaces =
          new HuntFile(
                  file,
                  requirement,
                  Optional.ofNullable(fault),
                  Optional.ofNullable(phase),
                  (long) shift * MILLI)
              .spaces(warnings);
      warnings.tell(spec.commandLine().getErr());
    } catch (ScenarioException e) {
      throw new BadInputException(e.getMessage());
    } catch (HuntFile.UnusableException | PlanException e) {
      throw new BadInputException("tankwright: " + e.getMessage());
    }
    return report(run(new Hunt(requirement, spaces, chosen, budget, seed)));
  }

  private HuntResult run(Hunt hunt) {
    PrintWriter err = spec.commandLine().getErr();
    Progress line = new Progress(Terminal.isPresent() && !quiet ? err : null);
    try {
      return hunt.run(
          (spent, least) ->
              line.say(
                  "hunt: "
                      + spent
                      + " of "
                      + budget
                      + (least.isNaN()
                          ? ", not exercised yet"
                          : ", least margin " + Plain.number(least))));
    } finally {
      line.clear();
    }
  }

  private int report(HuntResult result) {
    boolean held =
        result.least().map(e -> e.reading().outcome() == Verdict.Outcome.HELD).orElse(false);
    PrintWriter print = spec.commandLine().getOut();
    boolean talks = !quiet || !held;
    if (talks) {
      print.println(HuntText.of(result));
    }
    List<Path> written = write(result);
    if (talks) {
      written.forEach(path -> print.println("written: " + path));
      if (out != null && result.least().isPresent()) {
        print.println("tankwright run " + written.get(2));
      }
    }
    return held ? ExitCode.HELD : ExitCode.FAILED;
  }

  private List<Path> write(HuntResult result) {
    if (out == null) {
      return List.of();
    }
    List<String> names = new ArrayList<>(List.of("evaluations.csv", "margin.svg"));
    List<String> texts = new ArrayList<>(List.of(HuntCsv.of(result), HuntPlot.of(result)));
    result
        .least()
        .ifPresent(
            least -> {
              Replay replay = HuntText.replay(least, "worst");
              names.addAll(replay.names());
              texts.addAll(replay.texts());
            });
    return new CampaignFolder(out).write(names, texts);
  }

  private Method method() throws BadInputException {
    return Arrays.stream(Method.values())
        .filter(one -> one.key().equals(method))
        .findFirst()
        .orElseThrow(
            () ->
                new BadInputException(
                    "tankwright: --method is '" + method + "'; it must be cma-es or random"));
  }

  private static void require(boolean holds, String message) throws BadInputException {
    if (!holds) {
      throw new BadInputException("tankwright: " + message);
    }
  }
}
