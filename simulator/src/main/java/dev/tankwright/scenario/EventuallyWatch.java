package dev.tankwright.scenario;

import dev.tankwright.loop.SignalSource;
import java.util.OptionalDouble;

/**
 * Judges a condition that must come to hold. With a latest moment, or without a number to compare,
 * the margin is the time that was left when the condition first held; otherwise it is the
 * condition's greatest robustness.
 */
final class EventuallyWatch implements RequirementWatch {
  private final Verdicts verdicts;
  private final Condition condition;
  private final long beforeMillis;
  private final boolean byDistance;
  private final boolean measured;
  private final String unit;
  private final Observation first;
  private final Observation best;
  private double margin = Double.NEGATIVE_INFINITY;
  private long steps;

  EventuallyWatch(Requirement.Eventually requirement) {
    verdicts = new Verdicts(requirement);
    condition = requirement.condition();
    beforeMillis = requirement.beforeMillis().orElse(Long.MAX_VALUE);
    measured = condition.measure().isPresent();
    byDistance = measured && requirement.beforeMillis().isEmpty();
    unit = condition.measure().orElse("");
    first = new Observation(condition);
    best = new Observation(condition);
  }

  @Override
  public void step(long millis, SignalSource source) {
    steps++;
    if (first.isTaken() && !byDistance) {
      return;
    }
    if (!first.isTaken() && condition.holds(source)) {
      first.take(millis, source);
    }
    if (measured) {
      double robustness = condition.robustness(source);
      if (robustness > margin) {
        margin = robustness;
        best.take(millis, source);
      }
    }
  }

  @Override
  public Verdict verdict(long endMillis) {
    if (steps == 0) {
      return verdicts.notExercised("The run had no step.");
    }
    if (!first.isTaken()) {
      return never(endMillis);
    }
    return byDistance && Double.isFinite(margin) ? farthest() : inTime(endMillis);
  }

  private Verdict never(long endMillis) {
    String text = "It never came to be so until the run ended at " + Plain.moment(endMillis);
    if (!Double.isFinite(margin)) {
      return verdicts.failed(endMillis, OptionalDouble.empty(), "", text + ".");
    }
    text += "; closest " + best + ", short by " + Plain.distance(-margin, unit) + ".";
    return byDistance
        ? verdicts.failed(best.millis(), OptionalDouble.of(margin), unit, text)
        : verdicts.failed(best.millis(), OptionalDouble.empty(), "", text);
  }

  private Verdict farthest() {
    String text =
        "First so " + first + "; farthest " + best + ", by " + Plain.distance(margin, unit) + ".";
    return verdicts.held(first.millis(), OptionalDouble.of(margin), unit, text);
  }

  private Verdict inTime(long endMillis) {
    long limit = beforeMillis == Long.MAX_VALUE ? endMillis : beforeMillis;
    long left = limit - first.millis();
    boolean held = left >= 0;
    String time = Plain.moment(Math.abs(left));
    String text =
        "First so " + first + (held ? "; " + time + " to spare." : "; " + time + " late.");
    return verdicts.inTime(held, first.millis(), left, text);
  }
}
