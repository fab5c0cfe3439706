package dev.tankwright.events;

import dev.tankwright.controller.board.Fault;
import dev.tankwright.controller.board.Phase;
import java.util.ArrayList;
import java.util.List;

/** Tells an accepted reset, and which faults it has cleared: those cleared in the same scan. */
final class ResetWatch {
  private final List<Fault> cleared = new ArrayList<>();
  private long clearedAtMs = -1;

  void cleared(Fault fault, long uptimeMs) {
    if (uptimeMs != clearedAtMs) {
      cleared.clear();
      clearedAtMs = uptimeMs;
    }
    cleared.add(fault);
  }

  List<Fault> clearedAt(long uptimeMs) {
    return uptimeMs == clearedAtMs ? List.copyOf(cleared) : List.of();
  }

  /** The phase table has one way out of a lockout, and it is the operator's. */
  static boolean isReset(Phase from, Phase to) {
    return from == Phase.LOCKOUT && to != Phase.LOCKOUT;
  }
}
