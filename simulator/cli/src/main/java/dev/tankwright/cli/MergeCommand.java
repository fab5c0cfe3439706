package dev.tankwright.cli;

import dev.tankwright.campaign.CampaignResult;
import dev.tankwright.campaign.ResultFileException;
import dev.tankwright.campaign.ResultStore;
import dev.tankwright.campaign.Shards;
import dev.tankwright.report.campaign.CampaignFolder;
import dev.tankwright.report.campaign.CampaignPages;
import dev.tankwright.report.files.UnwritableException;
import dev.tankwright.report.text.CampaignText;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine;

/** Joins the shards of a campaign. */
@CommandLine.Command(
    name = "merge",
    description = "Join the shards of a campaign that 'tankwright campaign --shard' wrote.",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    footer = {
      "",
      "The result is byte for byte that of a single machine. A missing, incomplete, "
          + "damaged or duplicate shard, or one of another campaign or version, is "
          + "invalid input."
    })
final class MergeCommand implements Callable<Integer> {
  @CommandLine.Spec private CommandLine.Model.CommandSpec spec;

  @CommandLine.Parameters(
      arity = "1..*",
      paramLabel = "DIR",
      description = "The folders of all shards, in any order.")
  private List<Path> folders;

  @CommandLine.Option(
      names = "--out",
      paramLabel = "DIR",
      required = true,
      description = "Folder for the joined result; must not hold results yet.")
  private Path out;

  @CommandLine.Option(
      names = "--quiet",
      description = "Print only errors, and the result if something failed.")
  private boolean quiet;

  @Override
  public Integer call() throws BadInputException {
    try {
      CampaignResult result = Shards.join(folders);
      try (ResultStore store = ResultStore.open(out, result.about())) {
        store.requireEmpty();
        store.end(result);
        new CampaignFolder(out).write(result);
        CampaignPages.write(out, result, Optional.empty());
      }
      int code = result.allHeld() ? ExitCode.HELD : ExitCode.FAILED;
      if (!quiet || code != ExitCode.HELD) {
        spec.commandLine().getOut().print(CampaignText.of(result, result.about().file()));
      }
      return code;
    } catch (ResultFileException e) {
      throw new BadInputException("tankwright: " + e.getMessage());
    } catch (IOException e) {
      throw new UnwritableException("the result in " + out + " cannot be written (" + e + ")", e);
    }
  }
}
