package dev.tankwright.report.summary;

import dev.tankwright.report.results.CampaignResults;
import dev.tankwright.report.results.Results;
import dev.tankwright.report.results.RunResults;
import dev.tankwright.scenario.Verdict;

/**
 * What differs between the summary of runs and that of a campaign; markup apart from the texts.
 *
 * @param outcome the worst there is
 * @param title text: what the page is about
 * @param purpose text: what it was run for
 * @param headline text: the verdict in a few words
 * @param rest text: what the headline leaves out, or empty
 * @param counts how many came to what, as entries of a description list
 * @param inputs what was run
 * @param requirements every requirement
 * @param attention what did not hold or was not shown, or that there is nothing
 */
record SummaryParts(
    Verdict.Outcome outcome,
    String title,
    String purpose,
    String headline,
    String rest,
    String counts,
    String inputs,
    String requirements,
    String attention) {
  /** The parts for results of either kind. */
  static SummaryParts of(Results results) {
    return results instanceof CampaignResults campaign
        ? CampaignSummary.of(campaign)
        : RunsSummary.of((RunResults) results);
  }
}
