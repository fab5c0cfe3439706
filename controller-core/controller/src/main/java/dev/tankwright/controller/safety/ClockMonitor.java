package dev.tankwright.controller.safety;

import dev.tankwright.controller.board.Fault;

/** The millisecond counter stands still or has jumped: no time can be trusted. */
final class ClockMonitor extends Monitor {
  ClockMonitor() {
    super(Fault.CLOCK_FAULT, 0);
  }

  @Override
  boolean holds(Watch w) {
    return w.measured.clock().isAstray();
  }
}
