package dev.tankwright.cli;

import dev.tankwright.campaign.CampaignReader;
import dev.tankwright.campaign.Plan;
import dev.tankwright.campaign.PlanException;
import dev.tankwright.report.ResultPages;
import dev.tankwright.report.campaign.CampaignPages;
import dev.tankwright.report.changes.ChangesFolder;
import dev.tankwright.report.changes.ChangesText;
import dev.tankwright.report.changes.Comparison;
import dev.tankwright.report.files.ManifestCheck;
import dev.tankwright.report.files.UnreadableException;
import dev.tankwright.report.results.Results;
import dev.tankwright.report.summary.SummaryText;
import dev.tankwright.scenario.yaml.ScenarioException;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine;

/** Summarises, compares and verifies results written earlier. */
@CommandLine.Command(
    name = "report",
    description =
        "Summarise results for filing, compare them with an earlier release's, or verify that their"
            + " files are unaltered.",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    footer = {
      "",
      "Writes summary.html, to be printed and signed, and SHA256SUMS, the checksums "
          + "of all files it covers; with --baseline also changes.html. The baseline is "
          + "only read. Exit code 1 with --baseline: a requirement or cell that held now "
          + "fails or is no longer exercised; with --verify: a file is altered or missing; "
          + "otherwise: a requirement failed or was not exercised."
    })
final class ReportCommand implements Callable<Integer> {
  @CommandLine.Spec private CommandLine.Model.CommandSpec spec;

  @CommandLine.Parameters(
      paramLabel = "DIR",
      description = "Folder that 'run' or 'campaign' wrote with --out.")
  private Path folder;

  @CommandLine.Option(
      names = "--baseline",
      paramLabel = "DIR",
      description = "Folder of an earlier release's results, of the same scenarios or campaign.")
  private Path baseline;

  @CommandLine.Option(
      names = "--tolerance",
      paramLabel = "PERCENT",
      defaultValue = "5",
      description =
          "Relative change of a margin that still counts as unchanged. Default:"
              + " ${DEFAULT-VALUE}.")
  private double tolerance;

  @CommandLine.Option(
      names = "--strict",
      description = "With --baseline: exit code 1 also for reduced margins and missing entries.")
  private boolean strict;

  @CommandLine.Option(
      names = "--campaign",
      paramLabel = "FILE",
      description =
          "The campaign's file, to run its worst cases again for report.html, as after 'merge'.")
  private Path campaign;

  @CommandLine.Option(
      names = "--verify",
      description = "Compute the checksums of SHA256SUMS again; write nothing.")
  private boolean verify;

  @Override
  public Integer call() throws BadInputException {
    check();
    try {
      if (verify) {
        return verified(ManifestCheck.of(folder));
      }
      return baseline == null ? summarised() : compared();
    } catch (UnreadableException e) {
      throw new BadInputException("tankwright: " + e.getMessage());
    }
  }

  private void check() throws BadInputException {
    if (verify && baseline != null) {
      throw new BadInputException(
          "tankwright: --verify and --baseline cannot be combined; verify first, then compare");
    }
    if (campaign != null && (verify || baseline != null)) {
      throw new BadInputException(
          "tankwright: --campaign cannot be combined with --verify or --baseline; write the"
              + " report first");
    }
    if (strict && baseline == null) {
      throw new BadInputException("tankwright: --strict needs a --baseline to compare with");
    }
    if (!(tolerance >= 0 && tolerance <= 100)) {
      throw new BadInputException(
          "tankwright: --tolerance is " + tolerance + "; it must be from 0 to 100 (percent)");
    }
  }

  private int verified(ManifestCheck verification) {
    print(verification.text());
    return verification.isIntact() ? ExitCode.HELD : ExitCode.FAILED;
  }

  private int summarised() throws UnreadableException, BadInputException {
    Results results =
        campaign == null
            ? ResultPages.write(folder)
            : CampaignPages.writeAgain(folder, plan(), Version.text());
    print(SummaryText.of(results));
    return results.allHeld() ? ExitCode.HELD : ExitCode.FAILED;
  }

  private Plan plan() throws BadInputException {
    try {
      return new Plan(CampaignReader.read(campaign));
    } catch (ScenarioException | PlanException e) {
      throw new BadInputException("tankwright: " + e.getMessage());
    }
  }

  private int compared() throws UnreadableException {
    Comparison comparison = Comparison.of(baseline, folder, tolerance / 100);
    ChangesFolder.write(comparison);
    print(ChangesText.of(comparison));
    boolean worse = comparison.hasRegressed() || (strict && comparison.hasLost());
    return worse ? ExitCode.FAILED : ExitCode.HELD;
  }

  private void print(String text) {
    spec.commandLine().getOut().print(text);
    spec.commandLine().getOut().flush();
  }
}
