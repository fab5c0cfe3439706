package dev.tankwright.plant;

/**
 * The hardware's own last line on the heated wall: a limiter that opens at 90 °C (common practice,
 * no source: 80–90 °C) and stays open.
 */
final class Limiter {
  private static final double OPENS_CELSIUS = 90;

  private boolean tripped;

  void step(double wallCelsius) {
    tripped |= wallCelsius >= OPENS_CELSIUS;
  }

  boolean isTripped() {
    return tripped;
  }
}
