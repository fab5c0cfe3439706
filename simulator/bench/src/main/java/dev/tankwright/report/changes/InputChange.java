package dev.tankwright.report.changes;

import dev.tankwright.campaign.About;
import dev.tankwright.report.results.CampaignResults;
import dev.tankwright.report.results.Results;
import dev.tankwright.report.results.RunResults;
import dev.tankwright.report.results.SavedRun;
import dev.tankwright.report.text.ChangedParameters;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;

/**
 * Something that was run otherwise than for the earlier results.
 *
 * @param where the run, or empty when it is all of them
 * @param what what is otherwise
 * @param before what it was
 * @param after what it is
 */
public record InputChange(String where, String what, String before, String after) {
  /** All that is otherwise. */
  static List<InputChange> of(Results before, Results after) {
    List<InputChange> changes = new ArrayList<>();
    if (before instanceof CampaignResults earlier && after instanceof CampaignResults later) {
      campaigns(earlier, later, changes);
    } else if (before instanceof RunResults earlier && after instanceof RunResults later) {
      Map<String, SavedRun> then = new LinkedHashMap<>();
      earlier.runs().forEach(run -> then.put(run.name(), run));
      for (SavedRun run : later.runs()) {
        if (then.containsKey(run.name())) {
          run(then.get(run.name()), run, changes);
        }
      }
    }
    return changes;
  }

  private static void run(SavedRun before, SavedRun after, List<InputChange> changes) {
    String where = after.name();
    note(where, "scenario file", before.about().sha256(), after.about().sha256(), changes);
    note(where, "seed", "" + before.about().seed(), "" + after.about().seed(), changes);
    note(where, "device", before.about().device(), after.about().device(), changes);
    TreeSet<String> keys = new TreeSet<>(before.controller().keySet());
    keys.addAll(after.controller().keySet());
    for (String key : keys) {
      String then = ChangedParameters.value(key, before.controller().get(key));
      note(where, key, then, ChangedParameters.value(key, after.controller().get(key)), changes);
    }
  }

  private static void campaigns(
      CampaignResults before, CampaignResults after, List<InputChange> changes) {
    About then = before.about();
    About now = after.about();
    note("", "campaign, scenarios and baths", then.sha256(), now.sha256(), changes);
    note("", "seed", "" + then.seed(), "" + now.seed(), changes);
    note("", "cases", "" + then.cases(), "" + now.cases(), changes);
    note("", "cases run", "" + before.cases(), "" + after.cases(), changes);
  }

  private static void note(
      String where, String what, String before, String after, List<InputChange> changes) {
    if (!before.equals(after)) {
      changes.add(new InputChange(where, what, before, after));
    }
  }

  /** A checksum cut to what tells it from others; anything else as it is. */
  static String brief(String value) {
    return value.matches("[0-9a-f]{64}") ? value.substring(0, 12) + "\u2026" : value;
  }
}
