package dev.tankwright.hunt;

import dev.tankwright.scenario.Verdict;
import java.util.OptionalDouble;

/**
 * What one run said of the requirement.
 *
 * @param outcome held, failed, or not exercised, which shows nothing
 * @param margin how far it stayed from failing; empty where it has no measure
 * @param unit unit of the margin, empty for a share or without one
 */
public record Reading(Verdict.Outcome outcome, OptionalDouble margin, String unit) {
  static final Reading NOTHING =
      new Reading(Verdict.Outcome.NOT_EXERCISED, OptionalDouble.empty(), "");

  /** True when the run shows nothing: neither a good one nor a bad one. */
  public boolean isVacuous() {
    return outcome == Verdict.Outcome.NOT_EXERCISED;
  }

  /**
   * The margin as a number that can be compared. A failure without a measure lies below all of
   * them, what held without one above, and so does a run that shows nothing.
   */
  public double rank() {
    if (margin.isPresent() && !Double.isNaN(margin.getAsDouble())) {
      return margin.getAsDouble();
    }
    return outcome == Verdict.Outcome.FAILED ? Double.NEGATIVE_INFINITY : Double.POSITIVE_INFINITY;
  }
}
