package dev.tankwright.report.changes;

import dev.tankwright.report.files.UnreadableException;
import dev.tankwright.report.results.CampaignHeadline;
import dev.tankwright.report.results.CampaignResults;
import dev.tankwright.report.results.Results;
import dev.tankwright.report.results.RunResults;
import dev.tankwright.report.results.SavedRun;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/** Refuses to compare what has nothing in common. */
final class ComparableResults {
  private ComparableResults() {}

  /**
   * Checks that two results are of the same scenarios or of the same campaign.
   *
   * @throws UnreadableException when they are not
   */
  static void require(Results before, Results after) throws UnreadableException {
    if (before instanceof CampaignResults earlier && after instanceof CampaignResults later) {
      campaigns(earlier, later);
    } else if (before instanceof RunResults earlier && after instanceof RunResults later) {
      runs(earlier, later);
    } else {
      boolean campaign = after instanceof CampaignResults;
      throw new UnreadableException(
          after.folder()
              + (campaign ? " holds a campaign" : " holds runs")
              + ", the baseline "
              + before.folder()
              + (campaign ? " holds runs" : " holds a campaign")
              + "; name results of the same kind");
    }
  }

  private static void runs(RunResults before, RunResults after) throws UnreadableException {
    if (before.isOneRun() != after.isOneRun()) {
      throw new UnreadableException(
          after.folder()
              + (after.isOneRun() ? " is the folder of one run" : " is a folder of runs")
              + ", the baseline "
              + before.folder()
              + (before.isOneRun() ? " that of one run" : " a folder of runs")
              + "; name two of the same kind");
    }
    Set<String> then = before.runs().stream().map(SavedRun::name).collect(Collectors.toSet());
    List<String> now = after.runs().stream().map(SavedRun::name).toList();
    if (now.stream().noneMatch(then::contains)) {
      throw new UnreadableException(
          "There is nothing to compare: "
              + after.folder()
              + " holds "
              + some(now)
              + ", the baseline "
              + before.folder()
              + " holds "
              + some(then.stream().sorted().toList())
              + "; name results of the same scenarios");
    }
  }

  private static void campaigns(CampaignResults before, CampaignResults after)
      throws UnreadableException {
    if (!before.about().file().equals(after.about().file())) {
      throw new UnreadableException(
          after.folder()
              + " holds the campaign of "
              + after.about().file()
              + ", the baseline "
              + before.folder()
              + " that of "
              + before.about().file()
              + "; name results of the same campaign");
    }
    if (!before.about().shard().equals(after.about().shard())) {
      throw new UnreadableException(
          after.folder()
              + " holds the "
              + CampaignHeadline.share(after)
              + ", the baseline "
              + before.folder()
              + " the "
              + CampaignHeadline.share(before)
              + "; join the shards first with 'tankwright merge'");
    }
  }

  private static String some(List<String> names) {
    List<String> few = names.subList(0, Math.min(3, names.size()));
    return String.join(", ", few)
        + (few.size() < names.size() ? " and " + (names.size() - few.size()) + " more" : "");
  }
}
