package dev.tankwright.controller;

import dev.tankwright.controller.board.Phase;
import dev.tankwright.controller.safety.FaultLatch;
import dev.tankwright.controller.sequence.Journal;
import dev.tankwright.controller.sequence.Sequence;

/**
 * When what is to outlast the power is worth keeping: at every change of phase, of the latched
 * faults and of what is due, and while a cycle is under way every few seconds, so that a power cut
 * costs a few seconds of it at most. Bookkeeping: nothing in the scan is decided by it.
 */
final class KeepingRule {
  /** How many words are kept. */
  static final int WORDS = 59;

  /** Version of the layout of these words. */
  static final int VERSION = 2;

  static final int PROGRESS_MS = 10_000;
  private static final int REST_MS = 600_000;

  private final Sequence sequence;
  private final FaultLatch faults;
  private final Journal journal;
  private Phase phase;
  private int faultBits;
  private int dues;
  private long againMs;

  KeepingRule(Sequence sequence, FaultLatch faults, Journal journal) {
    this.sequence = sequence;
    this.faults = faults;
    this.journal = journal;
  }

  /** True when something has changed that is worth keeping at once. */
  boolean wants(long uptimeMs) {
    return sequence.phase() != phase
        || faults.bits() != faultBits
        || sequence.dues() != dues
        || uptimeMs >= againMs;
  }

  /** Takes note that everything has just been kept. */
  void noteKept() {
    phase = sequence.phase();
    faultBits = faults.bits();
    dues = sequence.dues();
    againMs = journal.uptimeMs() + (phase.isInCycle() ? PROGRESS_MS : REST_MS);
  }
}
