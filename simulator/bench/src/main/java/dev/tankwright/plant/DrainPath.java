package dev.tankwright.plant;

import dev.tankwright.controller.board.Inputs;

/** The way out of the tank: the drain valve and, behind it, the hand valve to the pump-out. */
final class DrainPath {
  private final DrainValve valve;

  DrainPath(double stepSeconds) {
    valve = new DrainValve(stepSeconds);
  }

  /** Moves the valve and says which share of the drain's section is open. */
  double step(boolean openCommand, BrokenParts broken) {
    if (broken.none()) {
      valve.step(openCommand);
      return valve.opening();
    }
    if (!broken.has(PartFault.DRAIN_VALVE_STUCK)) {
      boolean forced = broken.has(PartFault.DRAIN_VALVE_STUCK_OPEN);
      boolean held = broken.has(PartFault.DRAIN_VALVE_STUCK_CLOSED);
      valve.step(forced || (openCommand && !held));
    }
    return passage(broken);
  }

  private double passage(BrokenParts broken) {
    if (broken.has(PartFault.PUMP_OUT_CLOSED)) {
      return 0;
    }
    double open = valve.opening() * broken.left(PartFault.DRAIN_SLOW);
    return Math.max(
        broken.has(PartFault.DRAIN_BLOCKED) ? 0 : open, broken.size(PartFault.DRAIN_LEAKING));
  }

  /** Shows the valve's end contacts. */
  void read(Inputs inputs) {
    inputs.drainOpenEnd(valve.isAtOpenEnd());
    inputs.drainClosedEnd(valve.isAtClosedEnd());
  }
}
