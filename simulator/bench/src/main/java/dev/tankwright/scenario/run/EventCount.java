package dev.tankwright.scenario.run;

import dev.tankwright.controller.board.Fault;
import dev.tankwright.controller.board.NoticeKind;
import dev.tankwright.controller.board.NoticeRing;
import dev.tankwright.loop.ClosedLoop;
import java.util.function.Consumer;

/**
 * Counts notices where nobody reads the events that would be composed of them, so that the board
 * has a growing number to keep in its memory as it has in a run with events. The number itself is
 * another one than there, for some events come of no notice; no decision of the board depends on
 * it. One thread, one run; no allocation per step.
 */
public final class EventCount implements NoticeRing.Taker {
  private final Consumer<Fault> faults;
  private long nextSequence = 1;

  /**
   * Makes a count that has not begun.
   *
   * @param faults told each fault that the controller raises
   */
  public EventCount(Consumer<Fault> faults) {
    this.faults = faults;
  }

  /** Takes what the scan has left, and judges it; once after each scan. */
  public void judge(ClosedLoop loop) {
    boolean news = !loop.controller().notices().isEmpty();
    loop.judge(this);
    if (news) {
      loop.controller().eventSequence((int) nextSequence);
    }
  }

  @Override
  public void take(NoticeKind kind, int first, int second, long uptimeMs) {
    nextSequence++;
    if (kind == NoticeKind.FAULT_RAISED) {
      faults.accept(Fault.of(first));
    }
  }
}
