package dev.tankwright.report.results;

import dev.tankwright.report.text.Words;
import dev.tankwright.scenario.Verdict;
import java.util.OptionalDouble;

/**
 * One thing that was judged, as it can be compared with another release's. Group and name together
 * are unique in their results.
 *
 * @param group what it belongs to: a run, or a fault of a campaign
 * @param name a requirement, or a cell of a campaign
 * @param id id of the safety requirement, or empty
 * @param outcome what it came to
 * @param margin how far it stayed from failing; empty where it has no measure
 * @param unit unit of the margin, empty where it has none
 * @param detail one sentence, or empty
 */
public record JudgedLine(
    String group,
    String name,
    String id,
    Verdict.Outcome outcome,
    OptionalDouble margin,
    String unit,
    String detail) {
  /** What two releases know it by. */
  public String key() {
    return group + "\n" + name;
  }

  /** Its margin in words, or empty. */
  public String marginText() {
    return margin.isPresent() ? Words.margin(margin.getAsDouble(), unit) : "";
  }
}
