package dev.tankwright.scenario;

import dev.tankwright.loop.SignalSource;
import dev.tankwright.scenario.condition.Condition;
import dev.tankwright.scenario.condition.LeastDistance;
import dev.tankwright.scenario.condition.Observation;
import dev.tankwright.scenario.quantity.Plain;
import java.util.OptionalDouble;

/**
 * Judges a condition that must become true. With a latest moment, or where no number decides, the
 * margin is the time that was left when the condition first held; otherwise it is the condition's
 * greatest distance. One that never came is late by at least the time from its latest moment to the
 * run's end.
 */
final class EventuallyWatch implements RequirementWatch {
  private static final long ANY_TIME = Long.MAX_VALUE;

  private final Verdicts verdicts;
  private final Condition condition;
  private final long beforeMillis;
  private final Observation first;
  // The greatest distance of a condition is the least of its opposite.
  private final LeastDistance shortfall;
  private final boolean measured;
  private final boolean byDistance;
  private long steps;

  EventuallyWatch(Requirement.Eventually requirement) {
    verdicts = new Verdicts(requirement);
    condition = requirement.condition();
    beforeMillis = requirement.beforeMillis().orElse(ANY_TIME);
    first = new Observation(condition);
    shortfall = new LeastDistance(new Condition.Not(condition));
    measured = shortfall.isMeasured();
    byDistance = measured && beforeMillis == ANY_TIME;
  }

  @Override
  public void step(long millis, SignalSource source) {
    steps++;
    if (first.isTaken() && !byDistance) {
      return;
    }
    double missing = measured ? shortfall.step(millis, source) : 0;
    // Only at the limit itself, or without a number, does the distance not say what holds.
    boolean holds = missing < 0 || (missing == 0 && condition.holds(source));
    if (holds && !first.isTaken()) {
      first.take(millis, source);
    }
  }

  @Override
  public Verdict verdict(long endMillis) {
    if (steps == 0) {
      return verdicts.notExercised("The run had no steps.");
    }
    if (!first.isTaken()) {
      return never(endMillis);
    }
    boolean far = byDistance && shortfall.value().isPresent();
    return far ? farthest(-shortfall.value().getAsDouble()) : inTime(endMillis);
  }

  private Verdict never(long endMillis) {
    String text = "Never became true; the run ended at " + Plain.moment(endMillis);
    long late = beforeMillis == ANY_TIME ? 0 : Math.max(0, endMillis - beforeMillis);
    if (late > 0) {
      text += ", " + Plain.moment(late) + " after the limit";
    }
    if (shortfall.value().isEmpty()) {
      return verdicts.inTime(false, endMillis, -late, text + ".");
    }
    double missing = shortfall.value().getAsDouble();
    Observation best = shortfall.at();
    text += "; closest " + best + ", short by " + Plain.distance(missing, shortfall.unit()) + ".";
    return byDistance
        ? verdicts.failed(best.millis(), OptionalDouble.of(-missing), shortfall.unit(), text)
        : verdicts.inTime(false, best.millis(), -late, text);
  }

  private Verdict farthest(double margin) {
    String by = Plain.distance(margin, shortfall.unit());
    String text = "First true " + first + "; farthest " + shortfall.at() + ", by " + by + ".";
    return verdicts.held(first.millis(), OptionalDouble.of(margin), shortfall.unit(), text);
  }

  private Verdict inTime(long endMillis) {
    long limit = beforeMillis == ANY_TIME ? endMillis : beforeMillis;
    long left = limit - first.millis();
    boolean held = left >= 0;
    String time = Plain.moment(Math.abs(left));
    String text =
        "First true " + first + (held ? "; " + time + " to spare." : "; " + time + " late.");
    return verdicts.inTime(held, first.millis(), left, text);
  }
}
