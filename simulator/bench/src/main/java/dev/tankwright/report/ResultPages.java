package dev.tankwright.report;

import dev.tankwright.report.campaign.CampaignPages;
import dev.tankwright.report.files.UnreadableException;
import dev.tankwright.report.files.UnwritableException;
import dev.tankwright.report.results.CampaignResults;
import dev.tankwright.report.results.Results;
import dev.tankwright.report.summary.SummaryFolder;
import java.nio.file.Path;
import java.util.Optional;

/** The pages of results that stand in their folder, made anew. */
public final class ResultPages {
  private ResultPages() {}

  /**
   * Reads a folder's results and writes summary and list.
   *
   * @return the results
   * @throws UnreadableException when it is no folder of results
   * @throws UnwritableException when a file cannot be written
   */
  public static Results write(Path folder) throws UnreadableException {
    Results results = Results.read(folder);
    if (results instanceof CampaignResults campaign) {
      CampaignPages.write(folder, campaign.result(), Optional.empty());
    } else {
      SummaryFolder.write(results);
    }
    return results;
  }
}
