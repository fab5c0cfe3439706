package dev.tankwright.controller.sequence;

import dev.tankwright.controller.board.Fault;
import dev.tankwright.controller.board.NoticeKind;
import dev.tankwright.controller.board.NoticeRing;
import dev.tankwright.controller.safety.FaultLog;

/**
 * Writes facts into the ring, with the controller's uptime beside them. The uptime is bookkeeping:
 * nothing is decided by it.
 */
public final class Journal implements FaultLog {
  private static final long SECOND = 1_000;

  private final NoticeRing ring;
  private long uptimeMs;
  private long nextSecondMs = SECOND;

  /** Makes a journal that writes into the given ring. */
  public Journal(NoticeRing ring) {
    this.ring = ring;
  }

  /** Lets time pass; true when a second has gone by since it was true last. */
  public boolean advance(int dtMs) {
    uptimeMs += dtMs;
    if (uptimeMs < nextSecondMs) {
      return false;
    }
    nextSecondMs += SECOND;
    return true;
  }

  /** Time since the controller was made, ms. */
  public long uptimeMs() {
    return uptimeMs;
  }

  /** Writes a notice. */
  public void note(NoticeKind kind, int first, int second) {
    ring.put(kind, first, second, uptimeMs);
  }

  @Override
  public void raised(Fault fault) {
    note(NoticeKind.FAULT_RAISED, fault.ordinal(), 0);
  }

  @Override
  public void cleared(Fault fault) {
    note(NoticeKind.FAULT_CLEARED, fault.ordinal(), 0);
  }
}
