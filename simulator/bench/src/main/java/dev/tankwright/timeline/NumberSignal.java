package dev.tankwright.timeline;

import dev.tankwright.loop.Signal;
import dev.tankwright.scenario.condition.Condition;
import java.math.BigDecimal;

/**
 * A signal that is a number. Limits are in the signal's unit: °C, L, W, s, or 1 for shares.
 *
 * @param signal the signal
 */
public record NumberSignal(Signal signal) {
  /**
   * It is less than the limit.
   *
   * @throws IllegalArgumentException when a condition cannot hold this limit
   */
  public Condition below(double limit) {
    return compare("<", limit);
  }

  /**
   * It is the limit or less.
   *
   * @throws IllegalArgumentException when a condition cannot hold this limit
   */
  public Condition atMost(double limit) {
    return compare("<=", limit);
  }

  /**
   * It is more than the limit.
   *
   * @throws IllegalArgumentException when a condition cannot hold this limit
   */
  public Condition above(double limit) {
    return compare(">", limit);
  }

  /**
   * It is the limit or more.
   *
   * @throws IllegalArgumentException when a condition cannot hold this limit
   */
  public Condition atLeast(double limit) {
    return compare(">=", limit);
  }

  private Condition compare(String order, double limit) {
    if (!Double.isFinite(limit)) {
      throw new IllegalArgumentException(
          signal.key() + " cannot be compared with " + limit + "; give a finite number");
    }
    String number = BigDecimal.valueOf(limit).stripTrailingZeros().toPlainString();
    String unit = signal.quantity().unit();
    String text = signal.key() + " " + order + " " + number;
    return Condition.of(unit.isEmpty() ? text : text + " " + unit);
  }
}
