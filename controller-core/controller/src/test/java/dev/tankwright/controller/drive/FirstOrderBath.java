package dev.tankwright.controller.drive;

/**
 * Six litres of water with a 400 W heater and a loss of 4 W/K to a room of 20 °C; the sensor
 * follows with 10 s. Round figures of the right size, no source.
 */
final class FirstOrderBath {
  private static final double HEAT_CAPACITY = 6 * 4_180.0;
  private static final double POWER = 400;
  private static final double LOSS = 4;
  private static final double ROOM = 20;
  private static final double LAG_S = 10;

  private double celsius;
  private double sensor;
  private double lowest;
  private double highest;
  private double sum;
  private long steps;
  private int switchings;
  private boolean wasOn;

  FirstOrderBath(double celsius) {
    this.celsius = celsius;
    sensor = celsius;
    forgetExtremes();
  }

  void forgetExtremes() {
    lowest = celsius;
    highest = celsius;
    sum = 0;
    steps = 0;
    switchings = 0;
  }

  void step(boolean on, int ms) {
    double seconds = ms / 1_000.0;
    celsius += ((on ? POWER : 0) - LOSS * (celsius - ROOM)) / HEAT_CAPACITY * seconds;
    sensor += (celsius - sensor) / LAG_S * seconds;
    lowest = Math.min(lowest, celsius);
    highest = Math.max(highest, celsius);
    sum += celsius;
    steps++;
    switchings += on == wasOn ? 0 : 1;
    wasOn = on;
  }

  int sensorMilliC() {
    return (int) Math.round(sensor * 1_000);
  }

  double lowest() {
    return lowest;
  }

  double highest() {
    return highest;
  }

  double mean() {
    return sum / steps;
  }

  int switchings() {
    return switchings;
  }

  @Override
  public String toString() {
    return "%.3f to %.3f °C, %d switchings".formatted(lowest, highest, switchings);
  }
}
