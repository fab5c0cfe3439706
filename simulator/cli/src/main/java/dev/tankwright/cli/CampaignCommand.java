package dev.tankwright.cli;

import dev.tankwright.campaign.Campaign;
import dev.tankwright.campaign.CampaignReader;
import dev.tankwright.campaign.Plan;
import dev.tankwright.campaign.PlanException;
import dev.tankwright.campaign.Replay;
import dev.tankwright.campaign.Shard;
import dev.tankwright.report.campaign.CampaignFolder;
import dev.tankwright.scenario.yaml.ScenarioException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.concurrent.Callable;
import java.util.function.LongSupplier;
import picocli.CommandLine;

/** Runs a campaign: many faults, in many phases, at many moments, over tolerances. */
@CommandLine.Command(
    name = "campaign",
    description =
        "Run a scenario with every fault in every phase at many moments over part tolerances.",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    footer = {
      "",
      "Each finished case is appended to results.tsv in DIR at once; at the end come "
          + "matrix.csv, cases.csv, junit.xml, report.html, summary.html, SHA256SUMS and, "
          + "in the folder worst, the worst cases run again. Ctrl-C stops between two "
          + "cases with exit code 130; --resume continues, whatever ended the run before. "
          + "Threads and shards do not change the results.",
      "A simulation is evidence about logic, not a certificate."
    })
final class CampaignCommand implements Callable<Integer> {
  private final LongSupplier nanoseconds;

  @CommandLine.Spec private CommandLine.Model.CommandSpec spec;

  @CommandLine.Parameters(paramLabel = "FILE", description = "Campaign file.")
  private Path file;

  @CommandLine.Option(
      names = "--out",
      paramLabel = "DIR",
      description = "Folder for the results. Default: print only.")
  private Path out;

  @CommandLine.Option(
      names = "--threads",
      paramLabel = "N",
      description = "Cases run in parallel. Default: the number of processors.")
  private Integer threads;

  @CommandLine.Option(
      names = "--shard",
      paramLabel = "I/N",
      description =
          "Run only the I-th of N shards, 1/N to N/N; 'tankwright merge' joins them. Default: all.")
  private String shard;

  @CommandLine.Option(
      names = "--resume",
      description = "Resume the campaign in DIR; start it if there is none.")
  private boolean resume;

  @CommandLine.Option(
      names = "--replay",
      paramLabel = "NUMBER",
      description =
          "Only write the case of that number as a scenario file to DIR or the current folder.")
  private Integer replay;

  @CommandLine.Option(
      names = "--quiet",
      description = "Print only errors, and the result if something failed.")
  private boolean quiet;

  /** Measures by the machine's own clock. */
  CampaignCommand() {
    this(System::nanoTime);
  }

  /** Measures by the given clock, ns. */
  CampaignCommand(LongSupplier nanoseconds) {
    this.nanoseconds = nanoseconds;
  }

  @Override
  public Integer call() throws BadInputException {
    Shard share = share();
    int workers = Objects.requireNonNullElse(threads, Runtime.getRuntime().availableProcessors());
    require(workers >= 1, "--threads is " + threads + "; it must be at least 1");
    require(out != null || !resume, "--resume needs --out with the folder to resume");
    Plan plan;
    try {
      Warnings warnings = new Warnings();
      Campaign campaign = CampaignReader.read(file, warnings);
      warnings.tell(spec.commandLine().getErr());
      plan = new Plan(campaign);
    } catch (ScenarioException e) {
      throw new BadInputException(e.getMessage());
    } catch (PlanException e) {
      return refused(e);
    }
    if (replay != null) {
      return replay(plan);
    }
    CampaignSession session =
        new CampaignSession(spec.commandLine(), file.toString(), plan, nanoseconds, quiet);
    return session.run(out, share, workers, resume);
  }

  private int refused(PlanException e) throws BadInputException {
    if (!e.isFailedRequirement()) {
      throw new BadInputException("tankwright: " + e.getMessage());
    }
    spec.commandLine().getErr().println("tankwright: " + e.getMessage());
    return ExitCode.FAILED;
  }

  private Shard share() throws BadInputException {
    if (shard == null) {
      return Shard.WHOLE;
    }
    return Shard.parse(shard)
        .orElseThrow(
            () ->
                new BadInputException(
                    "tankwright: --shard is '"
                        + shard
                        + "'; give shard and number of shards, from 1/N to N/N, as in 3/16"));
  }

  private int replay(Plan plan) throws BadInputException {
    require(
        replay >= 0 && replay < plan.cases(),
        "--replay is "
            + replay
            + "; the cases of "
            + file
            + " are numbered from 0 to "
            + (plan.cases() - 1));
    Replay files = Replay.of(plan, String.valueOf(file.getFileName()), replay);
    Path folder = out == null ? Path.of("") : out;
    List<Path> written = new CampaignFolder(folder).write(files.names(), files.texts());
    PrintWriter print = spec.commandLine().getOut();
    written.forEach(path -> print.println("written: " + path));
    print.println("tankwright run " + written.get(0));
    return ExitCode.HELD;
  }

  private static void require(boolean holds, String message) throws BadInputException {
    if (!holds) {
      throw new BadInputException("tankwright: " + message);
    }
  }
}
