package dev.tankwright.controller.safety;

import dev.tankwright.controller.board.Fault;
import dev.tankwright.controller.board.HoldTimer;
import dev.tankwright.controller.board.StateWords;

/**
 * One safety function: a condition, how long it must last, and the fault it then latches. What the
 * fault does and what clears it is the fault's own data.
 */
abstract class Monitor {
  private final Fault fault;
  private final HoldTimer timer;

  Monitor(Fault fault, int holdMs) {
    this.fault = fault;
    this.timer = new HoldTimer(holdMs);
  }

  /**
   * Takes note of this scan.
   *
   * @param condition what must not last
   * @param cause what must be gone before a reset is accepted
   */
  final void watch(boolean condition, boolean cause, int dtMs, FaultLatch latch) {
    if (timer.run(condition, dtMs)) {
      latch.raise(fault);
    }
    if (cause) {
      latch.causePresent(fault);
    }
  }

  /** As {@link #watch}, where the condition is itself the cause. */
  final void watch(boolean condition, int dtMs, FaultLatch latch) {
    watch(condition, condition, dtMs, latch);
  }

  void carry(StateWords state) {
    timer.carry(state);
  }
}
