package dev.tankwright.plant;

import dev.tankwright.controller.board.Outputs;

/**
 * Mains, cut-off relay, heater relay, limiter, fuse and heating element in series, and the current
 * sense that watches them.
 */
final class HeaterCircuit {
  private final double ratedWatts;
  private final Switchgear relay;
  private final Switchgear cutOff;
  private final WallProtection lastLine = new WallProtection();
  private double watts;

  /**
   * Makes a circuit that carries nothing.
   *
   * @param ratedWatts of the element at nominal mains, W
   * @param relaySteps how many steps a relay's contacts take to follow
   */
  HeaterCircuit(double ratedWatts, int relaySteps) {
    this.ratedWatts = ratedWatts;
    relay = new Switchgear(relaySteps);
    cutOff = new Switchgear(relaySteps);
  }

  void step(Outputs outputs, BrokenParts broken, Supply supply, double wallCelsius) {
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

  boolean isSensed(BrokenParts broken) {
    return watts > 0 && !broken.has(PartFault.HEATER_CURRENT_SENSE_DEAD);
  }

  /** True once limiter or fuse has opened the circuit for good. */
  boolean isLastLineOpen() {
    return lastLine.isOpen();
  }
}
