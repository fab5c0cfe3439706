package dev.tankwright.scenario.run;

import dev.tankwright.controller.board.NoticeRing;
import dev.tankwright.loop.Action;
import dev.tankwright.loop.ClosedLoop;

/**
 * The host of a device: takes the controller's notices, and hears what the operator does that the
 * controller is not told. One thread, one run.
 */
public interface Host extends NoticeRing.Taker {
  /** An action is about to be done. */
  void hear(Action action, ClosedLoop loop);

  /** The board has been scanned, if it has its supply; the notices of that scan come next. */
  void scanned(ClosedLoop loop);

  /** Number of the next event, which the controller keeps in its memory. */
  long nextSequence();
}
