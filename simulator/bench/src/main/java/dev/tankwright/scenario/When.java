package dev.tankwright.scenario;

import dev.tankwright.controller.board.Phase;
import dev.tankwright.scenario.condition.Condition;

/**
 * When an entry of the timeline is due. All but {@link At} wait for another entry first: the one
 * before them in the list, or the one that they name, see {@link TimelineEntry#from()}.
 */
public sealed interface When {
  /**
   * At a moment, whatever the other entries do.
   *
   * @param millis ms since the start of the run, 0 or more
   */
  record At(long millis) implements When {}

  /**
   * Once a phase is reached. The first step counts in which the controller enters the phase, at or
   * after the moment in which the entry that is waited for was done; an entry that waits for none
   * counts from the start of the run, where the controller enters the phase it starts in. A stay in
   * the phase that had begun before does not count.
   *
   * @param phase the phase
   * @param delayMillis how long after the phase was entered, ms, 0 or more; the delay runs on even
   *     if the phase is left meanwhile
   */
  record On(Phase phase, long delayMillis) implements When {}

  /**
   * A time after the entry that is waited for was done for the last time.
   *
   * @param delayMillis ms, 0 or more
   */
  record Later(long delayMillis) implements When {}

  /**
   * Once a condition becomes true. The first step counts in which it is true and was not before, at
   * or after the moment in which the entry that is waited for was done; what is done in that moment
   * itself shows in the step after it. A condition that is true already does not count until it has
   * been false, but in the first step of the run it becomes true.
   *
   * @param condition the condition, over the signals as a step begins
   * @param delayMillis how long after it became true, ms, 0 or more; the delay runs on even if it
   *     becomes false meanwhile
   */
  record Crossing(Condition condition, long delayMillis) implements When {}
}
