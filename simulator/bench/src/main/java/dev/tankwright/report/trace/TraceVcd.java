package dev.tankwright.report.trace;

import dev.tankwright.loop.Signal;
import dev.tankwright.loop.Trace;
import dev.tankwright.scenario.run.RunResult;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;

/**
 * The trace as a value change dump for waveform viewers: the four-state form of IEEE 1364-2005,
 * clause 18, ASCII. Times are in ms since the start of the run. Numbers are {@code real}, switches
 * {@code wire} of one bit, words {@code wire} of as many bits as their list needs; a comment in the
 * header tells which number is which word. Scopes group the signals. The digits are those of {@link
 * TraceCsv}.
 *
 * <p>A dump has no way to write a number that is none. A signal that is ever without a number gets
 * a wire beside it, {@code …_valid}, which is 0 for as long, while the number stays as it was. The
 * same run gives the same bytes.
 */
public final class TraceVcd {
  private static final int FLUSH_AT = 1 << 15;

  private final StringBuilder buffer = new StringBuilder(FLUSH_AT + 4096);
  private final OutputStream out;
  private final Trace trace;
  private final List<VcdVariable> variables;

  private TraceVcd(Trace trace, OutputStream out) {
    this.trace = trace;
    this.out = out;
    this.variables = VcdVariable.of(trace);
  }

  /**
   * Writes the whole trace of a run; flushes and closes nothing.
   *
   * @throws IOException when the stream fails
   */
  public static void write(RunResult run, OutputStream out) throws IOException {
    TraceVcd dump = new TraceVcd(run.trace(), out);
    dump.header(run.about());
    dump.changes();
    dump.drain();
  }

  private void header(RunResult.About about) {
    section("date", about.startedAt() + " by the clock of the simulation");
    section("version", "Tankwright " + about.version());
    section("comment", "Scenario file " + about.file() + ", SHA-256 " + about.sha256());
    section("timescale", "1 ms");
    buffer.append("$scope module bench $end\n");
    VcdScope open = null;
    for (VcdVariable variable : variables) {
      if (variable.scope() != open) {
        buffer.append(open == null ? "" : "$upscope $end\n");
        buffer.append("$scope module ").append(variable.scope().key()).append(" $end\n");
        open = variable.scope();
      }
      buffer.append(variable.declaration());
    }
    buffer.append("$upscope $end\n$upscope $end\n$enddefinitions $end\n");
  }

  /** A text must not hold the word that ends it, nor anything but printable ASCII. */
  private void section(String keyword, String text) {
    String plain = text.replaceAll("[^ -~]", "?").replace("$", "?");
    buffer.append('$').append(keyword).append(' ').append(plain).append(" $end\n");
  }

  private void changes() throws IOException {
    long[] before = new long[variables.size()];
    for (int row = 0; row < trace.rows(); row++) {
      int start = buffer.length();
      buffer.append('#').append(trace.millis(row)).append('\n');
      buffer.append(row == 0 ? "$dumpvars\n" : "");
      boolean changed = row == 0;
      for (int i = 0; i < before.length; i++) {
        long now = variables.get(i).level(trace, row, before[i]);
        if (row == 0 || now != before[i]) {
          variables.get(i).append(buffer, now);
          before[i] = now;
          changed = true;
        }
      }
      buffer.append(row == 0 ? "$end\n" : "");
      boolean last = row == trace.rows() - 1;
      if (!changed && !last) {
        buffer.setLength(start);
      }
      if (buffer.length() >= FLUSH_AT) {
        drain();
      }
    }
  }

  private void drain() throws IOException {
    out.write(buffer.toString().getBytes(StandardCharsets.US_ASCII));
    buffer.setLength(0);
  }

  /** Name of a signal in the dump: the column of {@link TraceCsv} with underscores for hyphens. */
  public static String name(Signal signal) {
    return TraceCsv.column(signal).replace('-', '_');
  }
}
