package dev.tankwright.scenario.run;

import dev.tankwright.controller.board.Phase;
import dev.tankwright.loop.SignalSource;
import dev.tankwright.scenario.TimelineEntry;
import java.util.function.Consumer;

/** Where the actions of a run come from, step by step. */
public interface ActionSource {
  /**
   * Hands over what is to be done in a step, in order.
   *
   * @param millis ms since the start of the run, never less than in the step before
   * @param present the controller's phase as the step begins; {@code null} while the board has no
   *     supply and so no phase
   * @param source the signals as the step begins
   * @param doer does each entry
   */
  void step(long millis, Phase present, SignalSource source, Consumer<TimelineEntry> doer);
}
