package dev.tankwright.scenario;

import dev.tankwright.controller.board.Phase;

/** When an entry of the timeline is due. */
public sealed interface When {
  /**
   * At a moment, whatever the other entries do.
   *
   * @param millis ms since the start of the run, 0 or more
   */
  record At(long millis) implements When {}

  /**
   * Once a phase is reached. The first step counts in which the controller enters the phase, at or
   * after the moment in which the previous entry of the list was done; an entry that is first in
   * the list counts from the start of the run, where the controller enters the phase it starts in.
   * A stay in the phase that had begun before does not count.
   *
   * @param phase the phase
   * @param delayMillis how long after the phase was entered, ms, 0 or more; the delay runs on even
   *     if the phase is left meanwhile
   */
  record On(Phase phase, long delayMillis) implements When {}

  /**
   * A time after the previous entry of the list was done.
   *
   * @param delayMillis ms, 0 or more
   */
  record Then(long delayMillis) implements When {}
}
