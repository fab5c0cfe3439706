package dev.tankwright.scenario.run;

import dev.tankwright.controller.board.NoticeKind;
import dev.tankwright.loop.Action;
import dev.tankwright.loop.ClosedLoop;

/**
 * A host whose events nobody reads: it counts notices, so that the board has a growing number to
 * keep in its memory as it has in a run with events. The number itself is another one than there,
 * for some events come of no notice; no decision of the board depends on it. One thread, one run;
 * no allocation per step.
 */
public final class CountingHost implements Host {
  private long nextSequence = 1;

  @Override
  public void hear(Action action, ClosedLoop loop) {}

  @Override
  public void scanned(ClosedLoop loop) {}

  @Override
  public void take(NoticeKind kind, int first, int second, long uptimeMs) {
    nextSequence++;
  }

  @Override
  public long nextSequence() {
    return nextSequence;
  }
}
