package dev.tankwright.report.run;

import dev.tankwright.loop.Signal;
import dev.tankwright.loop.Trace;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;

/**
 * Which rows of a trace are plotted. A short trace is plotted whole. Of a long one these stay: the
 * first and the last row, both rows at every change of a discrete signal, and within each of
 * {@value #SPANS} spans of rows the lowest and the highest value of every continuous signal. So no
 * switching and no peak is lost.
 */
final class PlotRows {
  /** Signals that are drawn as lines; all others are steps. */
  static final List<Signal> CONTINUOUS =
      List.of(
          Signal.LIQUID_TEMPERATURE,
          Signal.MEASURED_TEMPERATURE,
          Signal.WALL_TEMPERATURE,
          Signal.VOLUME,
          Signal.DISSOLVED_GAS,
          Signal.ACTIVITY);

  /** Signals that are drawn as steps or bands. */
  static final List<Signal> DISCRETE =
      List.of(
          Signal.SETPOINT,
          Signal.DRIVE_LEVEL,
          Signal.HEATER,
          Signal.CUT_OFF_RELAY,
          Signal.ULTRASOUND,
          Signal.DRAIN_VALVE,
          Signal.LID_OPEN,
          Signal.LEVEL_LOW,
          Signal.DEGAS_OWED,
          Signal.LIMITER_TRIPPED,
          Signal.FAULT);

  private static final int WHOLE_UP_TO = 6_000;
  private static final int SPANS = 1_200;

  private PlotRows() {}

  /** The rows' numbers, ascending. */
  static int[] of(Trace trace) {
    int rows = trace.rows();
    BitSet kept = new BitSet(rows);
    if (rows <= WHOLE_UP_TO) {
      kept.set(0, rows);
    } else {
      kept.set(0);
      kept.set(rows - 1);
      changes(trace, kept);
      extremes(trace, kept);
    }
    return kept.stream().toArray();
  }

  private static void changes(Trace trace, BitSet kept) {
    for (Signal signal : DISCRETE) {
      double before = trace.value(0, signal);
      for (int row = 1; row < trace.rows(); row++) {
        double now = trace.value(row, signal);
        if (Double.compare(now, before) != 0) {
          kept.set(row - 1, row + 1);
          before = now;
        }
      }
    }
  }

  private static void extremes(Trace trace, BitSet kept) {
    int rows = trace.rows();
    int[] bounds = new int[SPANS + 1];
    Arrays.setAll(bounds, span -> (int) ((long) rows * span / SPANS));
    for (Signal signal : CONTINUOUS) {
      for (int span = 0; span < SPANS; span++) {
        extremesWithin(trace, signal, bounds[span], bounds[span + 1], kept);
      }
    }
  }

  private static void extremesWithin(Trace trace, Signal signal, int from, int to, BitSet kept) {
    int lowest = from;
    int highest = from;
    for (int row = from + 1; row < to; row++) {
      double value = trace.value(row, signal);
      if (value < trace.value(lowest, signal)) {
        lowest = row;
      }
      if (value > trace.value(highest, signal)) {
        highest = row;
      }
    }
    kept.set(lowest);
    kept.set(highest);
  }
}
