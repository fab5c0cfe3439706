package dev.tankwright.timeline;

import dev.tankwright.loop.Signal;
import dev.tankwright.loop.SignalSource;
import dev.tankwright.plant.Plant;

/** The signals of the last ten seconds, step by step. One thread; no allocation per step. */
final class History implements SignalSource {
  private static final int COLUMNS = Signal.all().size();
  private static final int ROWS = 1001;

  private final double[] values = new double[ROWS * COLUMNS];
  private long steps;

  void take(SignalSource source) {
    int row = (int) (steps % ROWS);
    for (Signal signal : Signal.all()) {
      values[row * COLUMNS + signal.ordinal()] = source.value(signal);
    }
    steps++;
  }

  /** True when it reaches back so far. */
  boolean reaches(long millisAgo) {
    long stepsAgo = millisAgo / Plant.STEP_MILLIS;
    return stepsAgo < ROWS && stepsAgo < steps;
  }

  /** Value some time ago, which must be a whole number of steps that is reached. */
  double value(Signal signal, long millisAgo) {
    int row = (int) ((steps - 1 - millisAgo / Plant.STEP_MILLIS) % ROWS);
    return values[row * COLUMNS + signal.ordinal()];
  }

  /** Value in the last step. */
  @Override
  public double value(Signal signal) {
    return value(signal, 0);
  }
}
