package dev.tankwright.report.trace;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.tankwright.loop.Signal;
import dev.tankwright.loop.Trace;
import dev.tankwright.report.SampleRun;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Form by RFC 4180, section 2: CR LF after each record, a header, the same count of fields. */
class TraceCsvTest {
  private final Trace trace = SampleRun.trace(500);

  @Test
  void readsBackToWhatWasTraced() throws IOException {
    String[] lines = text(trace).split("\r\n", -1);
    assertEquals(trace.rows() + 2, lines.length);
    assertEquals("", lines[lines.length - 1]);
    for (int row = 0; row < trace.rows(); row++) {
      String[] cells = lines[row + 1].split(",", -1);
      assertEquals(Signal.all().size() + 1, cells.length);
      assertEquals(trace.millis(row) / 1_000.0, Double.parseDouble(cells[0]), 1e-9);
      for (int i = 1; i < cells.length; i++) {
        check(Signal.all().get(i - 1), trace.value(row, Signal.all().get(i - 1)), cells[i]);
      }
    }
  }

  private static void check(Signal signal, double value, String cell) {
    switch (signal.quantity()) {
      case WORD -> assertEquals(signal.words().get((int) value), cell);
      case SWITCH -> assertEquals(value == 1 ? "1" : "0", cell);
      default -> assertEquals(value, Double.parseDouble(cell), 0.005, signal.key());
    }
  }

  @Test
  void namesEveryColumnWithItsUnit() throws IOException {
    String header = text(trace).substring(0, text(trace).indexOf("\r\n"));
    List<String> names = List.of(header.split(",", -1));
    Set<String> once = new HashSet<>(names);
    assertEquals(Signal.all().size() + 1, once.size());
    assertEquals("time_s", names.get(0));
    assertTrue(
        once.containsAll(
            List.of("liquid-temperature_degC", "volume_L", "heater-power_W", "remaining-time_s")));
    assertTrue(once.containsAll(List.of("dissolved-gas", "heater", "phase", "fault")));
  }

  @Test
  void givesTheSameBytesForTheSameTrace() throws IOException {
    assertArrayEquals(bytes(trace), bytes(SampleRun.trace(500)));
  }

  @Test
  void writesOnlyAHeaderForATraceWithoutRows() throws IOException {
    assertEquals(1, text(new Trace()).split("\r\n").length);
  }

  @Test
  void neverNeedsQuotes() throws IOException {
    assertFalse(text(trace).contains("\""));
    for (Signal signal : Signal.all()) {
      for (String word : signal.words()) {
        assertTrue(word.matches("[A-Z_]+"), word);
      }
    }
  }

  private static byte[] bytes(Trace trace) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    TraceCsv.write(trace, out);
    return out.toByteArray();
  }

  private static String text(Trace trace) throws IOException {
    return new String(bytes(trace), StandardCharsets.US_ASCII);
  }
}
