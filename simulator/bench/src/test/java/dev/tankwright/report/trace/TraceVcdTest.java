package dev.tankwright.report.trace;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.tankwright.loop.Signal;
import dev.tankwright.loop.Trace;
import dev.tankwright.report.SampleRun;
import dev.tankwright.scenario.run.RunResult;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

/** Form by IEEE 1364-2005, clause 18: the text is checked; no viewer takes part. */
class TraceVcdTest {
  private final RunResult run = SampleRun.of();

  @Test
  void readsBackToTheRowsOfTheCsv() throws IOException {
    VcdFile dump = new VcdFile(text(run));
    TreeMap<Long, Map<String, String>> at = new TreeMap<>(dump.at);
    String[] lines = csv(run.trace()).split("\r\n", -1);
    assertTrue(lines.length > 4_000);
    for (int row = 1; row < lines.length - 1; row++) {
      String[] cells = lines[row].split(",", -1);
      long millis = Math.round(Double.parseDouble(cells[0]) * 1_000);
      Map<String, String> values = at.floorEntry(millis).getValue();
      for (Signal signal : Signal.all()) {
        compare(signal, cells[signal.ordinal() + 1], values);
      }
    }
    assertEquals(run.trace().millis(run.trace().rows() - 1), at.lastKey(), "it ends with the run");
  }

  private static void compare(Signal signal, String cell, Map<String, String> values) {
    String path = path(signal);
    String value = values.get(path);
    switch (signal.quantity()) {
      case WORD -> assertEquals(cell, signal.words().get(Integer.parseInt(value, 2)));
      case SWITCH -> assertEquals(cell, value);
      default -> {
        boolean number = !cell.equals("NaN");
        assertEquals(number ? "1" : "0", values.getOrDefault(path + "_valid", "1"), path);
        if (number) {
          assertEquals(Double.parseDouble(cell), Double.parseDouble(value), 0, path);
        }
      }
    }
  }

  @Test
  void declaresEverySignalOnceInItsScope() throws IOException {
    VcdFile dump = new VcdFile(text(run));
    Set<String> paths = new HashSet<>();
    dump.byCode.values().forEach(variable -> paths.add(variable.path()));
    Signal.all().forEach(signal -> assertTrue(paths.remove(path(signal)), signal.key()));
    assertEquals(Set.of("bench.panel.measured_temperature_degC_valid"), paths);
    assertEquals("1 ms", dump.sections.get("$timescale"));
    assertEquals("Tankwright 0.1.0", dump.sections.get("$version"));
  }

  @Test
  void tellsInACommentWhichNumberIsWhichWord() throws IOException {
    List<String> comments = new VcdFile(text(run)).comments;
    for (Signal signal : Signal.all()) {
      for (int i = 0; i < signal.words().size(); i++) {
        String said = i + " " + signal.words().get(i);
        String start = TraceVcd.name(signal) + ":";
        assertTrue(
            comments.stream().anyMatch(c -> c.startsWith(start) && (c + ",").contains(said + ",")),
            said);
      }
    }
  }

  @Test
  void givesEachOfManyVariablesACodeOfItsOwn() {
    Set<String> codes = new HashSet<>();
    for (int number = 0; number < 10_000; number++) {
      String code = VcdVariable.code(number);
      assertTrue(code.matches("[!-~]{1,3}") && codes.add(code), code);
    }
  }

  @Test
  void keepsTextFromAFileOutOfItsGrammar() throws IOException {
    RunResult.About about = SampleRun.about("x");
    RunResult.About hostile =
        new RunResult.About(
            "a $end $var b\u00e9\n.yaml",
            about.title(),
            about.purpose(),
            about.device(),
            about.seed(),
            about.durationMillis(),
            about.startedAt(),
            about.version(),
            about.sha256());
    RunResult odd =
        new RunResult(
            hostile,
            run.profile(),
            run.verdicts(),
            run.phases(),
            run.marks(),
            run.trace(),
            run.recordJson());
    assertTrue(new VcdFile(text(odd)).comments.get(0).contains("a ?end ?var b??.yaml"));
  }

  @Test
  void givesTheSameBytesForTheSameRunAndFewerThanTheCsv() throws IOException {
    assertArrayEquals(bytes(run), bytes(SampleRun.of()));
    assertTrue(bytes(run).length < csv(run.trace()).length());
    assertFalse(text(run).contains("NaN"));
  }

  @Test
  void writesOnlyDeclarationsForATraceWithoutRows() throws IOException {
    RunResult empty =
        new RunResult(run.about(), run.profile(), List.of(), List.of(), List.of(), new Trace(), "");
    assertTrue(new VcdFile(text(empty)).at.isEmpty());
  }

  private static String path(Signal signal) {
    return "bench." + VcdScope.of(signal).key() + "." + TraceVcd.name(signal);
  }

  private static byte[] bytes(RunResult run) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    TraceVcd.write(run, out);
    return out.toByteArray();
  }

  private static String text(RunResult run) throws IOException {
    return new String(bytes(run), StandardCharsets.US_ASCII);
  }

  private static String csv(Trace trace) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    TraceCsv.write(trace, out);
    return out.toString(StandardCharsets.US_ASCII);
  }
}
