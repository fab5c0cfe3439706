package dev.tankwright.report.trace;

import dev.tankwright.loop.Signal;
import dev.tankwright.loop.Trace;
import dev.tankwright.report.text.Decimal;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;

/**
 * The trace as comma-separated values by RFC 4180: one header line, one line per row, CR LF after
 * each, no quotes needed, ASCII.
 *
 * <p>The first column is {@code time_s}, seconds since the start of the run with three decimals.
 * Every other column is named by its signal's key and, where there is a unit, an underscore and the
 * unit: {@code _degC}, {@code _L}, {@code _W}, {@code _s}. Numbers have a fixed count of decimals
 * per quantity and a point; switches are 0 or 1; words are words. A value that is no number is
 * written {@code NaN}, {@code Infinity} or {@code -Infinity}. The same trace gives the same bytes.
 */
public final class TraceCsv {
  private static final String LINE_END = "\r\n";
  private static final int FLUSH_AT = 1 << 15;

  private TraceCsv() {}

  /**
   * Writes the whole trace; flushes and closes nothing.
   *
   * @throws IOException when the stream fails
   */
  public static void write(Trace trace, OutputStream out) throws IOException {
    List<Signal> signals = Signal.all();
    StringBuilder buffer = new StringBuilder(FLUSH_AT + 1024);
    header(signals, buffer);
    for (int row = 0; row < trace.rows(); row++) {
      Decimal.append(buffer, trace.millis(row) / 1_000.0, 3);
      for (Signal signal : signals) {
        buffer.append(',');
        cell(signal, trace.value(row, signal), buffer);
      }
      buffer.append(LINE_END);
      if (buffer.length() >= FLUSH_AT) {
        drain(buffer, out);
      }
    }
    drain(buffer, out);
  }

  private static void header(List<Signal> signals, StringBuilder out) {
    out.append("time_s");
    for (Signal signal : signals) {
      out.append(',').append(column(signal));
    }
    out.append(LINE_END);
  }

  /** Name of a signal's column. */
  public static String column(Signal signal) {
    return switch (signal.quantity()) {
      case TEMPERATURE -> signal.key() + "_degC";
      case VOLUME -> signal.key() + "_L";
      case POWER -> signal.key() + "_W";
      case TIME -> signal.key() + "_s";
      case FRACTION, MARKS, SWITCH, WORD -> signal.key();
    };
  }

  private static void cell(Signal signal, double value, StringBuilder out) {
    if (signal.quantity() == Signal.Quantity.WORD) {
      out.append(signal.words().get((int) value));
    } else {
      Decimal.append(out, value, decimals(signal.quantity()));
    }
  }

  /** Decimals of a quantity's numbers; none for words, which are positions. */
  static int decimals(Signal.Quantity quantity) {
    return switch (quantity) {
      case TEMPERATURE -> 4;
      case VOLUME, FRACTION -> 6;
      case POWER, MARKS -> 2;
      case TIME -> 3;
      case SWITCH, WORD -> 0;
    };
  }

  private static void drain(StringBuilder buffer, OutputStream out) throws IOException {
    out.write(buffer.toString().getBytes(StandardCharsets.US_ASCII));
    buffer.setLength(0);
  }
}
