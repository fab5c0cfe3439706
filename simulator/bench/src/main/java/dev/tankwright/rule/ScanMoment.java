package dev.tankwright.rule;

import dev.tankwright.controller.board.Command;
import dev.tankwright.controller.board.Inputs;
import dev.tankwright.controller.board.Outputs;
import dev.tankwright.controller.board.Phase;

/** One scan as it is seen from outside. A struct, filled anew for every scan. */
final class ScanMoment {
  Inputs in;
  Outputs out;

  /** Phase before the scan. */
  Phase before;

  /** The command that is new in this scan, or {@code NONE}. */
  Command command;

  /** Faults announced and not yet cleared, after the scan, one bit each. */
  int latched;

  boolean dry;
  boolean hot;

  boolean driving() {
    return out.heaterRelay || out.ultrasoundEnable;
  }
}
