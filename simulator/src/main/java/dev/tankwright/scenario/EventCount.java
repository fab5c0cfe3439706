package dev.tankwright.scenario;

import dev.tankwright.controller.board.Fault;
import dev.tankwright.controller.board.NoticeKind;
import dev.tankwright.controller.board.NoticeRing;
import dev.tankwright.loop.ClosedLoop;
import java.util.function.Consumer;

/**
 * Counts events as their composer does, for the board keeps their number in its memory: one for
 * each notice, and one more for the record of a cycle that ends. For runs whose events nobody
 * reads. One thread, one run; no allocation per step.
 */
public final class EventCount implements NoticeRing.Taker {
  private final Consumer<Fault> faults;
  private long nextSequence = RunEvents.FIRST_SEQUENCE;

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
    nextSequence +=
        switch (kind) {
          case CYCLE_COMPLETED, CYCLE_STOPPED, CYCLE_INTERRUPTED -> 2;
          default -> 1;
        };
    if (kind == NoticeKind.FAULT_RAISED) {
      faults.accept(Fault.of(first));
    }
  }
}
