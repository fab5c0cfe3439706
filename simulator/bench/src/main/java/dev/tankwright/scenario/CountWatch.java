package dev.tankwright.scenario;

import dev.tankwright.loop.SignalSource;
import dev.tankwright.scenario.condition.Condition;
import dev.tankwright.scenario.quantity.Plain;
import java.util.OptionalDouble;
import java.util.OptionalLong;

/**
 * Judges how often a condition becomes true. One that is true in the first step became true there.
 * The margin is by how many times the count stayed within its bounds.
 */
final class CountWatch implements RequirementWatch {
  private static final String TIMES = "times";

  private final Verdicts verdicts;
  private final Condition condition;
  private final OptionalLong atLeast;
  private final OptionalLong atMost;
  private boolean wasTrue;
  private long steps;
  private long count;
  private long last;
  private long tooOften = -1;

  CountWatch(Requirement.Count requirement) {
    verdicts = new Verdicts(requirement);
    condition = requirement.condition();
    atLeast = requirement.atLeast();
    atMost = requirement.atMost();
  }

  @Override
  public void step(long millis, SignalSource source) {
    steps++;
    boolean isTrue = condition.holds(source);
    if (isTrue && !wasTrue) {
      count++;
      last = millis;
      if (atMost.isPresent() && count == atMost.getAsLong() + 1) {
        tooOften = millis;
      }
    }
    wasTrue = isTrue;
  }

  @Override
  public Verdict verdict(long endMillis) {
    if (steps == 0) {
      return verdicts.notExercised("The run had no steps.");
    }
    long above = atLeast.isPresent() ? count - atLeast.getAsLong() : Long.MAX_VALUE;
    long below = atMost.isPresent() ? atMost.getAsLong() - count : Long.MAX_VALUE;
    OptionalDouble margin = OptionalDouble.of((double) Math.min(above, below));
    String text = "Became true " + (count == 1 ? "once" : count + " times");
    text += count == 0 ? "." : ", last at " + Plain.moment(last) + ".";
    if (below < 0) {
      return verdicts.failed(tooOften, margin, TIMES, text);
    }
    if (above < 0) {
      return verdicts.failed(endMillis, margin, TIMES, text);
    }
    return verdicts.held(count == 0 ? endMillis : last, margin, TIMES, text);
  }
}
