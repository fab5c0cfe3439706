package dev.tankwright.scenario.run;

import dev.tankwright.controller.board.Fault;
import dev.tankwright.loop.ClosedLoop;
import dev.tankwright.scenario.TimelineEntry;

/** Hears what happens in a run. What it is told of a step it may not change. */
public interface RunListener {
  /** An entry of the timeline is about to be carried out. */
  default void action(TimelineEntry entry, long millis) {}

  /** The controller raises a fault. */
  default void fault(Fault fault, long millis) {}

  /** A step is done but for the time that passes in it: the outputs have just been set. */
  default void step(long millis, ClosedLoop loop) {}
}
