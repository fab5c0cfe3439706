package dev.tankwright.timeline;

import dev.tankwright.loop.Signal;
import dev.tankwright.scenario.condition.Condition;

/**
 * A signal that is one of several words.
 *
 * @param signal the signal
 */
public record WordSignal(Signal signal) {
  /**
   * It is that word.
   *
   * @throws IllegalArgumentException when the signal has no such word
   */
  public Condition is(Enum<?> word) {
    return Condition.of(signal.key() + " = " + word.name());
  }

  /**
   * It is any other word.
   *
   * @throws IllegalArgumentException when the signal has no such word
   */
  public Condition isNot(Enum<?> word) {
    return Condition.of(signal.key() + " != " + word.name());
  }

  /**
   * There is none; for signals that have the word {@code NONE}.
   *
   * @throws IllegalArgumentException when the signal has no such word
   */
  public Condition none() {
    return Condition.of(signal.key() + " = NONE");
  }
}
