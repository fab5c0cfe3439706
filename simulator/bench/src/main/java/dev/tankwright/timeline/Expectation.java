package dev.tankwright.timeline;

import dev.tankwright.loop.Signal;
import dev.tankwright.scenario.condition.Condition;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Set;

/**
 * What was expected and did not come.
 *
 * @param title the expectation in one line
 * @param expected what should have been
 * @param actual what was instead
 * @param condition what should have held
 * @param limitMillis how long it had time, ms; empty for none
 * @param trigger what shows in the signals that the time had begun; empty where nothing does
 */
record Expectation(
    String title,
    String expected,
    String actual,
    Condition condition,
    OptionalLong limitMillis,
    Optional<Condition> trigger) {

  /** The most informative signals: its own, and the state of the controller. */
  List<Signal> signals() {
    Set<Signal> named = EnumSet.noneOf(Signal.class);
    condition.visit(named::add);
    named.addAll(List.of(Signal.PHASE, Signal.FAULT, Signal.REFUSAL));
    return List.copyOf(named);
  }
}
