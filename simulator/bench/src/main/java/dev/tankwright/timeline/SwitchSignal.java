package dev.tankwright.timeline;

import dev.tankwright.loop.Signal;
import dev.tankwright.scenario.condition.Condition;

/**
 * A signal that is on or off.
 *
 * @param signal the signal
 */
public record SwitchSignal(Signal signal) {
  /** It is on, or true. */
  public Condition on() {
    return Condition.of(signal.key());
  }

  /** It is off, or false. */
  public Condition off() {
    return Condition.of("not " + signal.key());
  }
}
