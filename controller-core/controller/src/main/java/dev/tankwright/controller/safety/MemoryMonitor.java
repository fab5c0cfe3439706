package dev.tankwright.controller.safety;

import dev.tankwright.controller.board.Fault;

/** A table in memory that never changes has changed. */
final class MemoryMonitor extends Monitor {
  MemoryMonitor() {
    super(Fault.MEMORY_CORRUPT, 0);
  }

  @Override
  boolean holds(Watch w) {
    return w.measured.isTableWrong();
  }
}
