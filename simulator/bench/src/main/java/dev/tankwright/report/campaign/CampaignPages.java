package dev.tankwright.report.campaign;

import dev.tankwright.campaign.About;
import dev.tankwright.campaign.CampaignResult;
import dev.tankwright.campaign.Plan;
import dev.tankwright.report.files.OutputFolder;
import dev.tankwright.report.files.UnreadableException;
import dev.tankwright.report.files.UnwritableException;
import dev.tankwright.report.results.CampaignResults;
import dev.tankwright.report.results.Results;
import dev.tankwright.report.results.RunFiles;
import dev.tankwright.report.summary.SummaryFolder;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/**
 * The pages of a campaign in its folder: {@code report.html}, its worst cases below {@code worst},
 * {@code summary.html} and the list of checksums. To be written last, for they speak of the other
 * files.
 */
public final class CampaignPages {
  /** How many worst cases are run again and shown with their traces. */
  public static final int WORST = 12;

  private CampaignPages() {}

  /**
   * Writes the pages.
   *
   * @param folder the campaign's folder, with its results
   * @param result what stands in it
   * @param plan the campaign, to run its worst cases again; without it a report that is there
   *     already is kept, and a new one has no traces
   * @throws UnwritableException when a file cannot be written
   */
  public static void write(Path folder, CampaignResult result, Optional<Plan> plan) {
    CampaignResults results = new CampaignResults(folder, result);
    if (plan.isPresent() || !Files.exists(folder.resolve(RunFiles.REPORT))) {
      OutputFolder out = new OutputFolder(folder);
      List<WorstCase> worst =
          plan.map(known -> WorstCases.write(folder, known, result, WORST)).orElse(List.of());
      out.place(RunFiles.REPORT, stream -> stream.write(CampaignPage.render(results, worst)));
    }
    SummaryFolder.write(results);
  }

  /**
   * Writes the pages of a campaign that was run before, its worst cases run again.
   *
   * @param version the version of this program: another one might run the cases otherwise
   * @return what stands in the folder
   * @throws UnreadableException when it is no campaign's folder, or another campaign's
   * @throws UnwritableException when a file cannot be written
   */
  public static Results writeAgain(Path folder, Plan plan, String version)
      throws UnreadableException {
    if (!(Results.read(folder) instanceof CampaignResults results)) {
      throw new UnreadableException(
          folder + ": this folder holds runs; --campaign needs a campaign");
    }
    if (!results.about().version().equals(version)) {
      throw new UnreadableException(
          folder
              + ": these are results of version "
              + results.about().version()
              + "; this is "
              + version
              + ", which may run the cases otherwise");
    }
    About wanted = plan.about(version, results.about().shard());
    if (!wanted.sha256().equals(results.about().sha256())) {
      throw new UnreadableException(
          folder
              + ": these are results of "
              + results.about().file()
              + " with checksum "
              + results.about().sha256()
              + "; the file given is "
              + wanted.file()
              + " with "
              + wanted.sha256());
    }
    write(folder, results.result(), Optional.of(plan));
    return results;
  }
}
