package dev.tankwright.plant;

/**
 * A drain valve that a motor opens and a spring closes: it travels from end to end in a fixed time
 * and closes a contact at each end. Without supply it closes.
 */
final class DrainValve {
  private static final double TRAVEL_SECONDS = 2;

  private final double stepShare;
  private double opening;

  DrainValve(double stepSeconds) {
    stepShare = stepSeconds / TRAVEL_SECONDS;
  }

  void step(boolean openCommand) {
    opening = Math.max(0, Math.min(1, opening + (openCommand ? stepShare : -stepShare)));
  }

  /** 0 closed to 1 open. */
  double opening() {
    return opening;
  }

  boolean isAtOpenEnd() {
    return opening >= 1;
  }

  boolean isAtClosedEnd() {
    return opening <= 0;
  }
}
