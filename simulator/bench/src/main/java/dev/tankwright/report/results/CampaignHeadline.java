package dev.tankwright.report.results;

import dev.tankwright.campaign.CaseOutcome;
import dev.tankwright.report.text.CaseWords;
import java.util.ArrayList;
import java.util.List;

/** A whole campaign in a few words. */
public final class CampaignHeadline {
  private CampaignHeadline() {}

  /** The whole campaign in a few words. */
  public static String headline(CampaignResults results) {
    int failed = results.count(CaseOutcome.FAILED);
    if (failed > 0) {
      return CaseWords.number(failed)
          + " of "
          + CaseWords.number(results.cases())
          + " cases failed";
    }
    if (!results.isComplete()) {
      return CaseWords.number(results.cases())
          + " of "
          + CaseWords.number(results.wanted())
          + " cases were run";
    }
    int held = results.count(CaseOutcome.HELD);
    return held == results.cases()
        ? "All " + CaseWords.number(held) + " cases held"
        : CaseWords.number(held) + " of " + CaseWords.number(results.cases()) + " cases held";
  }

  /** What the headline leaves out, or empty. */
  public static String rest(CampaignResults results) {
    List<String> parts = new ArrayList<>();
    if (results.count(CaseOutcome.FAILED) > 0) {
      parts.add(CaseWords.number(results.count(CaseOutcome.HELD)) + " held");
    }
    for (CaseOutcome outcome :
        new CaseOutcome[] {CaseOutcome.NOT_REACHED, CaseOutcome.NOT_EXERCISED}) {
      if (results.count(outcome) > 0) {
        parts.add(CaseWords.number(results.count(outcome)) + " " + CaseWords.outcome(outcome));
      }
    }
    if (!results.isComplete()) {
      parts.add(CaseWords.number(results.wanted() - results.cases()) + " never run");
    }
    return String.join(", ", parts);
  }

  /** Whether the whole campaign was run, not a share of it. */
  public static String share(CampaignResults results) {
    String shard = results.about().shard().toString();
    return shard.equals("1/1") ? "whole campaign" : "shard " + shard;
  }
}
