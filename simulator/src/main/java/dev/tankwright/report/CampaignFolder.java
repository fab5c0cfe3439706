package dev.tankwright.report;

/** The files that a campaign leaves in a directory. */
public final class CampaignFolder {
  /** What it came to, for {@code tankwright report}, see {@link CampaignJson}. */
  public static final String RESULT = "campaign.json";

  private CampaignFolder() {}
}
