package dev.tankwright.report.campaign;

import dev.tankwright.loop.Signal;
import dev.tankwright.loop.Trace;
import java.util.function.DoubleToIntFunction;

/** Long traces as short paths: at most four points, or one band, for a column of the drawing. */
final class TraceThinning {
  private TraceThinning() {}

  /**
   * A line through a signal's first, lowest, highest and last value of every column. Where there is
   * no number, and where a setpoint is none, the line is broken.
   *
   * @param from start of the window, ms; the row before it begins the line at its edge
   * @param to end of the window, ms
   * @param height height of a value, from the top
   */
  static String path(Trace trace, Signal signal, long from, long to, DoubleToIntFunction height) {
    StringBuilder out = new StringBuilder(4_096);
    int before = -1;
    int lowest = 0;
    int highest = 0;
    int last = -1;
    boolean down = false;
    for (int row = 0; row < trace.rows(); row++) {
      int x = isNear(trace, row, from, to) ? edge(trace.millis(row), from, to) : -1;
      double value = trace.value(row, signal);
      boolean none = !Double.isFinite(value) || (signal == Signal.SETPOINT && value == 0);
      if (x < 0 || none) {
        down = false;
        before = -1;
        continue;
      }
      int y = height.applyAsInt(value);
      if (x != before || !down) {
        close(out, before, lowest, highest, last);
        if (!down || y != last || x > before + 1) {
          out.append(down ? 'L' : 'M').append(x).append(' ').append(y);
        }
        lowest = y;
        highest = y;
        down = true;
        before = x;
      }
      lowest = Math.max(lowest, y);
      highest = Math.min(highest, y);
      last = y;
    }
    close(out, before, lowest, highest, last);
    return out.toString();
  }

  /** True for rows of the window, for the one before it and for the one after it. */
  private static boolean isNear(Trace trace, int row, long from, long to) {
    boolean ends = row + 1 < trace.rows() && trace.millis(row + 1) < from;
    boolean starts = row > 0 && trace.millis(row - 1) > to;
    return !ends && !starts;
  }

  private static int edge(long millis, long from, long to) {
    long within = Math.max(from, Math.min(to, millis));
    return (int) ((within - from) * TracePlot.WIDE / (to - from));
  }

  /** Goes to what a column reached beyond its first value, and to its last. */
  private static void close(StringBuilder out, int x, int lowest, int highest, int last) {
    if (x >= 0 && lowest != highest) {
      out.append('V').append(highest).append('V').append(lowest).append('V').append(last);
    }
  }

  /** One closed band for every stretch of columns in which a switch is on at any time. */
  static String bands(Trace trace, Signal signal, long from, long to) {
    boolean[] on = new boolean[TracePlot.WIDE];
    for (int row = 0; row < trace.rows(); row++) {
      long until = row + 1 < trace.rows() ? trace.millis(row + 1) : to;
      if (trace.value(row, signal) > 0 && until >= from && trace.millis(row) <= to) {
        int first = column(Math.max(trace.millis(row), from), from, to);
        int last = column(Math.min(until, to), from, to);
        for (int x = first; x <= Math.max(first, last - 1); x++) {
          on[x] = true;
        }
      }
    }
    StringBuilder out = new StringBuilder(512);
    for (int x = 0; x < on.length; x++) {
      if (on[x]) {
        int start = x;
        while (x < on.length && on[x]) {
          x++;
        }
        out.append('M').append(start).append(" 0h").append(x - start).append("v10H").append(start);
        out.append('z');
      }
    }
    return out.toString();
  }

  private static int column(long millis, long from, long to) {
    return (int) Math.min(TracePlot.WIDE - 1, (millis - from) * TracePlot.WIDE / (to - from));
  }
}
