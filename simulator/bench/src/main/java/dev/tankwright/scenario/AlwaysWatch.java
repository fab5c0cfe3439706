package dev.tankwright.scenario;

import dev.tankwright.loop.SignalSource;
import dev.tankwright.scenario.condition.Condition;
import dev.tankwright.scenario.condition.LeastDistance;
import dev.tankwright.scenario.condition.Observation;
import dev.tankwright.scenario.condition.TimeDistance;
import dev.tankwright.scenario.quantity.Plain;
import java.util.OptionalDouble;

/**
 * Judges a condition that must hold in every step, or in every step of a situation. The margin is
 * the least distance of its numbers; where it has none, the time by which a signal could have come
 * later; where it has and a switch or a word broke it, the longest time for which it was broken.
 */
final class AlwaysWatch implements RequirementWatch {
  private static final long NONE = -1;

  private final Verdicts verdicts;
  private final Condition condition;
  private final Condition during;
  private final LeastDistance numbers;
  private final TimeDistance times;
  private final boolean measured;
  private final Observation firstBreach;
  private long brokenSince = NONE;
  private long longestBreach;
  private long steps;
  private long breaches;

  /**
   * Makes a judge.
   *
   * @param condition what must hold
   * @param during the situation in which it must; {@code null} for all of the run
   */
  AlwaysWatch(Requirement requirement, Condition condition, Condition during) {
    verdicts = new Verdicts(requirement);
    this.condition = condition;
    this.during = during;
    numbers = new LeastDistance(condition);
    measured = numbers.isMeasured();
    times = measured ? null : new TimeDistance(scoped(condition, during));
    firstBreach = new Observation(scoped(condition, during));
  }

  private static Condition scoped(Condition condition, Condition during) {
    return during == null ? condition : new Condition.Or(new Condition.Not(during), condition);
  }

  @Override
  public void step(long millis, SignalSource source) {
    boolean asked = during == null || during.holds(source);
    boolean unbroken = times == null ? !asked || holds(millis, source) : times.step(millis, source);
    if (asked) {
      steps++;
    }
    if (!unbroken) {
      breaks(millis, source);
    } else if (brokenSince != NONE) {
      longestBreach = Math.max(longestBreach, millis - brokenSince);
      brokenSince = NONE;
    }
  }

  /** Numbers with a positive distance hold: most steps are done with one evaluation. */
  private boolean holds(long millis, SignalSource source) {
    return numbers.step(millis, source) > 0 || condition.holds(source);
  }

  private void breaks(long millis, SignalSource source) {
    if (breaches++ == 0) {
      firstBreach.take(millis, source);
    }
    if (brokenSince == NONE) {
      brokenSince = millis;
    }
  }

  @Override
  public Verdict verdict(long endMillis) {
    if (steps == 0) {
      return verdicts.notExercised(
          during == null ? "The run had no steps." : "'" + during + "' never held in the run.");
    }
    OptionalDouble margin = numbers.value();
    if (margin.isPresent()) {
      return byNumbers(margin.getAsDouble());
    }
    return byTime(times == null ? byBreach(endMillis) : times.leastMillis(endMillis));
  }

  /** Where a switch broke what numbers also decide: the longest time for which it was broken. */
  private double byBreach(long endMillis) {
    long open = brokenSince == NONE ? 0 : endMillis - brokenSince;
    return breaches == 0 ? Double.POSITIVE_INFINITY : -Math.max(longestBreach, open);
  }

  private Verdict byNumbers(double margin) {
    if (breaches == 0) {
      return verdicts.closest(numbers);
    }
    OptionalDouble told = OptionalDouble.of(margin);
    Observation worst = numbers.at();
    String text = worst.millis() == firstBreach.millis() ? "" : "; worst " + worst;
    text += margin < 0 ? "; beyond the limit by " + Plain.distance(-margin, numbers.unit()) : "";
    return verdicts.failed(worst.millis(), told, numbers.unit(), breach(text));
  }

  private Verdict byTime(double least) {
    if (breaches > 0) {
      String text = "; for " + Plain.moment((long) -least);
      return verdicts.failed(firstBreach.millis(), seconds(least), Verdicts.SECONDS, breach(text));
    }
    boolean never = verdicts.requirement() instanceof Requirement.Never;
    String text = "In " + (never ? "none" : "each") + " of " + scope() + " " + steps + " steps";
    if (Double.isInfinite(least)) {
      return verdicts.held(text + ".");
    }
    text += "; closest at " + Plain.moment(times.leastAt());
    return verdicts.held(
        times.leastAt(),
        seconds(least),
        Verdicts.SECONDS,
        text + ", with " + Plain.moment((long) least) + " to spare.");
  }

  private static OptionalDouble seconds(double millis) {
    return OptionalDouble.of(millis / 1000);
  }

  private String scope() {
    return during == null ? "the run's" : "these";
  }

  private String breach(String how) {
    return "First violated "
        + firstBreach
        + how
        + "; violated in "
        + breaches
        + " of "
        + steps
        + " steps.";
  }
}
