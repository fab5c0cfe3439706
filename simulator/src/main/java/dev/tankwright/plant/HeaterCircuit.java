package dev.tankwright.plant;

import dev.tankwright.controller.board.Outputs;

/**
 * Mains, cut-off relay, heater relay, limiter and heating element in series, and the current sense
 * that watches them.
 */
final class HeaterCircuit {
  private static final int RELAY_DELAY_STEPS = 2;

  private final double watts;
  private final Switchgear relay = new Switchgear(RELAY_DELAY_STEPS);
  private final Switchgear cutOff = new Switchgear(RELAY_DELAY_STEPS);
  private final Limiter limiter = new Limiter();
  private boolean flowing;

  HeaterCircuit(double watts) {
    this.watts = watts;
  }

  void step(Outputs outputs, Breakages broken, double wallCelsius) {
    limiter.step(wallCelsius);
    boolean closed = relay.follow(outputs.heaterRelay) || broken.has(PartFault.HEATER_RELAY_WELDED);
    boolean series = cutOff.follow(outputs.cutOffRelay) && !limiter.isTripped();
    boolean whole = !broken.has(PartFault.HEATER_OPEN) && !broken.has(PartFault.MAINS_CUT);
    flowing = closed && series && whole;
  }

  double watts() {
    return flowing ? watts : 0;
  }

  boolean isSensed(Breakages broken) {
    return flowing && !broken.has(PartFault.HEATER_CURRENT_SENSE_DEAD);
  }

  boolean isLimiterTripped() {
    return limiter.isTripped();
  }
}
