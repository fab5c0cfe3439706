package dev.tankwright.scenario;

import dev.tankwright.scenario.condition.LeastDistance;
import dev.tankwright.scenario.quantity.Plain;
import java.util.OptionalDouble;
import java.util.OptionalLong;

/** Makes verdicts of one requirement. */
record Verdicts(Requirement requirement) {
  /** Unit of times. */
  static final String SECONDS = "s";

  // Added to a negative zero it gives a positive one, which a person would not tell apart.
  private static final double POSITIVE_ZERO = 0.0;

  Verdict notExercised(String detail) {
    return make(
        Verdict.Outcome.NOT_EXERCISED, OptionalLong.empty(), OptionalDouble.empty(), "", detail);
  }

  Verdict held(long millis, OptionalDouble margin, String unit, String detail) {
    return make(Verdict.Outcome.HELD, OptionalLong.of(millis), margin, unit, detail);
  }

  /** Held, with the least distance of its numbers; they must have decided somewhere. */
  Verdict closest(LeastDistance numbers) {
    String away = Plain.distance(numbers.value().orElseThrow(), numbers.unit());
    String text = "Closest " + numbers.at() + "; " + away + " from failing.";
    return held(numbers.at().millis(), numbers.value(), numbers.unit(), text);
  }

  /** Held, with nothing to measure and no moment that matters more than another. */
  Verdict held(String detail) {
    return make(Verdict.Outcome.HELD, OptionalLong.empty(), OptionalDouble.empty(), "", detail);
  }

  Verdict failed(long millis, OptionalDouble margin, String unit, String detail) {
    return make(Verdict.Outcome.FAILED, OptionalLong.of(millis), margin, unit, detail);
  }

  /** Time left, in seconds. */
  Verdict inTime(boolean held, long millis, long leftMillis, String detail) {
    OptionalDouble left = OptionalDouble.of(leftMillis / 1000.0);
    return held ? held(millis, left, SECONDS, detail) : failed(millis, left, SECONDS, detail);
  }

  private Verdict make(
      Verdict.Outcome outcome,
      OptionalLong moment,
      OptionalDouble margin,
      String unit,
      String detail) {
    Requirement.Label label = requirement.label();
    return new Verdict(
        label.name(),
        label.id(),
        requirement.statement(),
        outcome,
        moment,
        margin.isPresent() ? OptionalDouble.of(margin.getAsDouble() + POSITIVE_ZERO) : margin,
        margin.isPresent() ? unit : "",
        detail);
  }
}
