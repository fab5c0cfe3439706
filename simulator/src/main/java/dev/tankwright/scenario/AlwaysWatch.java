package dev.tankwright.scenario;

import dev.tankwright.loop.SignalSource;
import java.util.OptionalDouble;

/**
 * Judges a condition that must hold in every step, or in every step of a situation. The margin is
 * the least distance of its numbers; where a switch or a word decides, the time by which a signal
 * could have come later.
 */
final class AlwaysWatch implements RequirementWatch {
  private final Verdicts verdicts;
  private final Condition condition;
  private final Condition during;
  private final Least numbers;
  private final TimeDistance times;
  private final boolean measured;
  private final Observation firstBreach;
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
    numbers = new Least(condition);
    measured = numbers.distance().isMeasured();
    boolean timed = numbers.distance().isDecidedByOthers();
    times = timed ? new TimeDistance(scoped(condition, during)) : null;
    firstBreach = new Observation(scoped(condition, during));
  }

  private static Condition scoped(Condition condition, Condition during) {
    return during == null ? condition : new Condition.Or(new Condition.Not(during), condition);
  }

  @Override
  public void step(long millis, SignalSource source) {
    boolean unbroken = times != null && times.step(millis, source);
    if (during != null && !during.holds(source)) {
      return;
    }
    steps++;
    double distance = measured ? numbers.step(millis, source) : 0;
    if (times == null) {
      // Numbers with a positive distance hold: most steps are done with one evaluation.
      unbroken = distance > 0 || condition.holds(source);
    }
    if (!unbroken && breaches++ == 0) {
      firstBreach.take(millis, source);
    }
  }

  @Override
  public Verdict verdict(long endMillis) {
    if (steps == 0) {
      return verdicts.notExercised(
          during == null ? "The run had no step." : "'" + during + "' never held in the run.");
    }
    OptionalDouble margin = numbers.value();
    if (margin.isPresent()) {
      return byNumbers(margin.getAsDouble());
    }
    double least = times == null ? Double.POSITIVE_INFINITY : times.leastMillis(endMillis);
    return byTime(least);
  }

  private Verdict byNumbers(double margin) {
    OptionalDouble told = OptionalDouble.of(margin);
    Observation worst = numbers.at();
    if (breaches == 0) {
      String away = Plain.distance(margin, numbers.unit());
      return verdicts.held(
          worst.millis(),
          told,
          numbers.unit(),
          "Closest " + worst + "; " + away + " from failing.");
    }
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
    return "Broken first "
        + firstBreach
        + how
        + "; broken in "
        + breaches
        + " of "
        + steps
        + " steps.";
  }
}
