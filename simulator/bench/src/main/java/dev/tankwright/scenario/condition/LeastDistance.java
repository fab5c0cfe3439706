package dev.tankwright.scenario.condition;

import dev.tankwright.loop.SignalSource;
import java.util.OptionalDouble;

/** The least {@link Distance} of a condition over the steps that were shown, and when it was. */
public final class LeastDistance {
  private final Condition condition;
  private final Distance distance;
  private final boolean mixed;
  private final Observation at;
  private double weight = Double.POSITIVE_INFINITY;
  private double told = Double.POSITIVE_INFINITY;
  private String unit = "";

  public LeastDistance(Condition condition) {
    this.condition = condition;
    distance = new Distance(condition);
    mixed = distance.isMixed();
    at = new Observation(condition);
  }

  /** True when a number is compared. */
  public boolean isMeasured() {
    return distance.isMeasured();
  }

  /** Looks at one step, and says how far the condition is from changing in it. */
  public double step(long millis, SignalSource source) {
    double now = mixed ? distance.weight(source) : condition.robustness(source);
    if (now < weight) {
      weight = now;
      told = distance.told(source);
      unit = distance.unit();
      at.take(millis, source);
    }
    return now;
  }

  /** The least distance in {@link #unit()}; empty where numbers decided nowhere. */
  public OptionalDouble value() {
    return Double.isFinite(told) ? OptionalDouble.of(told) : OptionalDouble.empty();
  }

  public String unit() {
    return unit;
  }

  /** Where it was least. */
  public Observation at() {
    return at;
  }
}
