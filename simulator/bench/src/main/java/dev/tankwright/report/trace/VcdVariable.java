package dev.tankwright.report.trace;

import dev.tankwright.loop.Signal;
import dev.tankwright.loop.Trace;
import dev.tankwright.report.text.Decimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * One variable of a value change dump. Its value at a row is a whole number: scaled to its decimals
 * for a {@code real}, the position for a word, 0 or 1 for a wire of one bit.
 *
 * @param signal where the values come from
 * @param validity whether it tells that the signal has a number, instead of the number
 * @param code identifier code, one or more characters from {@code !} to {@code ~}
 */
record VcdVariable(Signal signal, boolean validity, String code) {
  private static final char FIRST = '!';
  private static final int CODES = '~' - '!' + 1;

  /** The variables of a trace, scope by scope. */
  static List<VcdVariable> of(Trace trace) {
    List<Signal> signals = new ArrayList<>(Signal.all());
    signals.sort(Comparator.comparing(VcdScope::of));
    List<VcdVariable> variables = new ArrayList<>();
    for (Signal signal : signals) {
      variables.add(new VcdVariable(signal, false, code(variables.size())));
      if (isEverWithoutNumber(trace, signal)) {
        variables.add(new VcdVariable(signal, true, code(variables.size())));
      }
    }
    return variables;
  }

  private static boolean isEverWithoutNumber(Trace trace, Signal signal) {
    for (int row = 0; row < trace.rows(); row++) {
      if (!Double.isFinite(trace.value(row, signal))) {
        return true;
      }
    }
    return false;
  }

  static String code(int number) {
    StringBuilder code = new StringBuilder(2);
    int rest = number;
    do {
      code.append((char) (FIRST + rest % CODES));
      rest = rest / CODES - 1;
    } while (rest >= 0);
    return code.toString();
  }

  VcdScope scope() {
    return VcdScope.of(signal);
  }

  /** The line that declares it; for words with a comment before it that lists them. */
  String declaration() {
    StringBuilder line = new StringBuilder(80);
    String name = TraceVcd.name(signal);
    if (isReal()) {
      line.append("$var real 64 ").append(code).append(' ').append(name);
    } else {
      words(line, name);
      line.append("$var wire ").append(bits()).append(' ').append(code).append(' ').append(name);
      line.append(validity ? "_valid" : bits() == 1 ? "" : " [" + (bits() - 1) + ":0]");
    }
    return line.append(" $end\n").toString();
  }

  private void words(StringBuilder out, String name) {
    List<String> words = signal.words();
    if (!words.isEmpty() && !validity) {
      out.append("$comment ").append(name).append(':');
      for (int i = 0; i < words.size(); i++) {
        out.append(i == 0 ? " " : ", ").append(i).append(' ').append(words.get(i));
      }
      out.append(" $end\n");
    }
  }

  private boolean isReal() {
    return switch (signal.quantity()) {
      case TEMPERATURE, VOLUME, POWER, TIME, FRACTION, MARKS -> !validity;
      case SWITCH, WORD -> false;
    };
  }

  private int bits() {
    int last = validity ? 0 : Math.max(0, signal.words().size() - 1);
    return Math.max(1, Integer.SIZE - Integer.numberOfLeadingZeros(last));
  }

  /** The value at a row; the one before where there is no number. */
  long level(Trace trace, int row, long before) {
    double value = trace.value(row, signal);
    if (validity) {
      return Double.isFinite(value) ? 1 : 0;
    }
    return Double.isFinite(value) ? Math.round(value * scale()) : before;
  }

  private long scale() {
    long scale = 1;
    for (int place = 0; place < TraceCsv.decimals(signal.quantity()); place++) {
      scale *= 10;
    }
    return scale;
  }

  /** Appends the line of a change. */
  void append(StringBuilder out, long level) {
    if (isReal()) {
      real(out.append('r'), level);
      out.append(' ');
    } else if (bits() == 1) {
      out.append(level);
    } else {
      out.append('b');
      for (int bit = bits() - 1; bit >= 0; bit--) {
        out.append((char) ('0' + (level >> bit & 1)));
      }
      out.append(' ');
    }
    out.append(code).append('\n');
  }

  /** As the C format {@code %.16g} prints it: no zeros at the end, no point without decimals. */
  private void real(StringBuilder out, long level) {
    int start = out.length();
    Decimal.append(out, (double) level / scale(), TraceCsv.decimals(signal.quantity()));
    if (out.indexOf(".", start) >= 0) {
      int end = out.length();
      while (out.charAt(end - 1) == '0') {
        end--;
      }
      out.setLength(out.charAt(end - 1) == '.' ? end - 1 : end);
    }
  }
}
