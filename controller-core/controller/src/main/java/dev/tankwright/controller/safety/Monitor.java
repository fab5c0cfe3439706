package dev.tankwright.controller.safety;

import dev.tankwright.controller.board.Fault;

/**
 * One safety function: a condition that must not last, for how long, and the fault that is then
 * latched. What the fault does and what clears it is the fault's own data.
 */
abstract class Monitor {
  private final Fault fault;
  private final int bit;
  private final int holdMs;

  /**
   * Declares a function.
   *
   * @param holdMs how long the condition must last, ms; 0 for none
   */
  Monitor(Fault fault, int holdMs) {
    this.fault = fault;
    this.bit = fault.bit();
    this.holdMs = holdMs;
  }

  final Fault fault() {
    return fault;
  }

  final int holdMs() {
    return holdMs;
  }

  /** The function's bit when the condition is there, else 0. */
  final int bit(boolean there) {
    return there ? bit : 0;
  }

  /**
   * Tells whether the condition is there. Called once in every scan, so a function with a memory
   * takes note of the scan in here.
   */
  abstract boolean holds(Watch w);

  /**
   * Tells whether the cause is there, for which a reset has to wait: the condition itself unless a
   * function says otherwise. Takes note of nothing, and may be called at any time.
   */
  boolean delaysReset(Watch w) {
    return holds(w);
  }
}
