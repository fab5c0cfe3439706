package dev.tankwright.controller.safety;

import dev.tankwright.controller.board.Fault;

/** Hears of faults as they are latched and cleared. */
public interface FaultLog {
  /** The fault has just been latched. */
  void raised(Fault fault);

  /** The fault has just been cleared. */
  void cleared(Fault fault);
}
