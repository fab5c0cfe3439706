package dev.tankwright.scenario;

import dev.tankwright.loop.SignalSource;
import java.util.OptionalDouble;

/** Judges a condition that must hold in every step; the margin is its least robustness. */
final class AlwaysWatch implements RequirementWatch {
  private final Verdicts verdicts;
  private final Condition condition;
  private final boolean measured;
  private final String unit;
  private final Observation firstBreach;
  private final Observation worst;
  private double margin = Double.POSITIVE_INFINITY;
  private long steps;
  private long breaches;

  AlwaysWatch(Requirement requirement, Condition condition) {
    verdicts = new Verdicts(requirement);
    this.condition = condition;
    measured = condition.measure().isPresent();
    unit = condition.measure().orElse("");
    firstBreach = new Observation(condition);
    worst = new Observation(condition);
  }

  @Override
  public void step(long millis, SignalSource source) {
    steps++;
    // A condition with a positive robustness holds: most steps are done with one evaluation.
    if (!(measured && measure(millis, source) > 0) && !condition.holds(source)) {
      if (breaches++ == 0) {
        firstBreach.take(millis, source);
      }
    }
  }

  private double measure(long millis, SignalSource source) {
    double robustness = condition.robustness(source);
    if (robustness < margin) {
      margin = robustness;
      worst.take(millis, source);
    }
    return robustness;
  }

  @Override
  public Verdict verdict(long endMillis) {
    if (steps == 0) {
      return verdicts.notExercised("The run had no step.");
    }
    boolean finite = Double.isFinite(margin);
    OptionalDouble distance = finite ? OptionalDouble.of(margin) : OptionalDouble.empty();
    if (breaches > 0) {
      long moment = finite ? worst.millis() : firstBreach.millis();
      return verdicts.failed(moment, distance, unit, breach(finite));
    }
    if (finite) {
      String away = Plain.distance(margin, unit);
      return verdicts.held(
          worst.millis(), distance, unit, "Closest " + worst + "; " + away + " from failing.");
    }
    boolean never = verdicts.requirement() instanceof Requirement.Never;
    return verdicts.held("In " + (never ? "none" : "each") + " of the run's " + steps + " steps.");
  }

  private String breach(boolean finite) {
    String text = "Broken first " + firstBreach;
    if (finite && worst.millis() != firstBreach.millis()) {
      text += "; worst " + worst;
    }
    String by =
        finite && margin < 0 ? "; beyond the limit by " + Plain.distance(-margin, unit) : "";
    return text + by + "; broken in " + breaches + " of " + steps + " steps.";
  }
}
