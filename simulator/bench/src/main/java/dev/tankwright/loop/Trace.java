package dev.tankwright.loop;

import java.util.Arrays;
import java.util.List;

/**
 * Sampled signals of one run, by row and column. Rows are appended in the order of time and never
 * change. Grows as needed; not thread-safe.
 */
public final class Trace {
  private static final int COLUMNS = Signal.all().size();

  private long[] millis = new long[1024];
  private double[] values = new double[1024 * COLUMNS];
  private int rows;

  /** Appends the present values of all signals. */
  public void sample(long atMillis, SignalSource source) {
    if (rows == millis.length) {
      millis = Arrays.copyOf(millis, rows * 2);
      values = Arrays.copyOf(values, values.length * 2);
    }
    millis[rows] = atMillis;
    List<Signal> signals = Signal.all();
    for (int column = 0; column < COLUMNS; column++) {
      values[rows * COLUMNS + column] = source.value(signals.get(column));
    }
    rows++;
  }

  /** How many rows there are. */
  public int rows() {
    return rows;
  }

  /** Moment of a row, ms since the start of the run. */
  public long millis(int row) {
    return millis[row];
  }

  /** Value of a signal in a row, see {@link Signal}. */
  public double value(int row, Signal signal) {
    return values[row * COLUMNS + signal.ordinal()];
  }
}
