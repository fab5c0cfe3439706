package dev.tankwright.plant;

import dev.tankwright.controller.board.Outputs;

/**
 * Mains, cut-off relay, heater relay, limiter, fuse and heating element in series, and the current
 * sense that watches them.
 */
final class HeaterCircuit {
  private static final int RELAY_DELAY_STEPS = 2;

  private final double ratedWatts;
  private final Switchgear relay = new Switchgear(RELAY_DELAY_STEPS);
  private final Switchgear cutOff = new Switchgear(RELAY_DELAY_STEPS);
  private final LastLine lastLine = new LastLine();
  private double watts;

  HeaterCircuit(double ratedWatts) {
    this.ratedWatts = ratedWatts;
  }

  void step(Outputs outputs, Breakages broken, Supply supply, double wallCelsius) {
    lastLine.step(wallCelsius, broken);
    boolean closed = relay.follow(outputs.heaterRelay);
    boolean series = cutOff.follow(outputs.cutOffRelay);
    double share = supply.powerShare();
    if (!broken.none()) {
      closed |= broken.has(PartFault.HEATER_RELAY_WELDED);
      series |= broken.has(PartFault.CUT_OFF_RELAY_WELDED);
      share *= broken.has(PartFault.HEATER_OPEN) ? 0 : broken.left(PartFault.HEATER_PARTIAL);
    }
    watts = closed && series && !lastLine.isOpen() ? ratedWatts * share : 0;
  }

  double watts() {
    return watts;
  }

  boolean isSensed(Breakages broken) {
    return watts > 0 && !broken.has(PartFault.HEATER_CURRENT_SENSE_DEAD);
  }

  /** True once limiter or fuse has opened the circuit for good. */
  boolean isLastLineOpen() {
    return lastLine.isOpen();
  }
}
