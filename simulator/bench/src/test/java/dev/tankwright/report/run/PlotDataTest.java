package dev.tankwright.report.run;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import dev.tankwright.loop.Signal;
import dev.tankwright.loop.Trace;
import dev.tankwright.report.SampleRun;
import dev.tankwright.scenario.run.RunResult;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

class PlotDataTest {
  @Test
  void decodesToWhatWasTraced() throws IOException {
    RunResult run = SampleRun.of();
    Map<String, List<Long>> lists = lists(PlotData.of(run));
    Trace trace = run.trace();
    assertEquals(trace.rows(), lists.get("t").size());
    long clock = 0;
    long sum = 0;
    List<Long> liquid = lists.get("liquid-temperature");
    for (int row = 0; row < trace.rows(); row++) {
      clock += lists.get("t").get(row);
      sum += liquid.get(row);
      assertEquals(trace.millis(row), clock);
      assertEquals(trace.value(row, Signal.LIQUID_TEMPERATURE), sum / 100.0, 0.0051);
    }
  }

  @Test
  void saysWhereThereIsNoNumber() throws IOException {
    List<Long> measured = lists(PlotData.of(SampleRun.of())).get("measured-temperature");
    Trace trace = SampleRun.of().trace();
    for (int row = 0; row < trace.rows(); row++) {
      boolean missing = Double.isNaN(trace.value(row, Signal.MEASURED_TEMPERATURE));
      assertEquals(missing, measured.get(row) == null, "row " + row);
    }
  }

  @Test
  void keepsEverySwitchingOfALongTrace() {
    Trace trace = SampleRun.trace(20);
    int[] rows = PlotRows.of(trace);
    assertTrue(rows.length < trace.rows() / 5, rows.length + " rows of " + trace.rows());
    assertEquals(0, rows[0]);
    assertEquals(trace.rows() - 1, rows[rows.length - 1]);
    for (Signal signal : PlotRows.DISCRETE) {
      for (int row = 1; row < trace.rows(); row++) {
        if (trace.value(row, signal) != trace.value(row - 1, signal)) {
          assertTrue(Arrays.binarySearch(rows, row) >= 0, signal + " changes in row " + row);
          assertTrue(Arrays.binarySearch(rows, row - 1) >= 0, signal + " before row " + row);
        }
      }
    }
  }

  @Test
  void keepsAPeakOfOneRow() {
    Trace trace = new Trace();
    for (int row = 0; row < 50_000; row++) {
      double value = row == 31_415 ? 71 : 40;
      trace.sample(row * 10L, signal -> signal == Signal.LIQUID_TEMPERATURE ? value : 0);
    }
    assertTrue(Arrays.binarySearch(PlotRows.of(trace), 31_415) >= 0);
  }

  @Test
  void endsNoScriptElementAndBreaksNoLine() {
    String data = PlotData.of(SampleRun.of());
    assertTrue(data.contains("\\u003c/script\\u003e"));
    assertTrue(data.contains("\\u2028"));
    String raw =
        data.chars()
            .filter(c -> "<>&'".indexOf(c) >= 0 || c > 0x7E || (c < 0x20 && c != '\n'))
            .mapToObj(c -> "U+" + Integer.toHexString(c))
            .collect(Collectors.joining(" "));
    assertEquals("", raw);
  }

  @Test
  void standsATraceWithoutRows() throws IOException {
    RunResult run = SampleRun.of();
    RunResult empty =
        new RunResult(run.about(), run.profile(), List.of(), List.of(), List.of(), new Trace(), "");
    assertEquals(List.of(), lists(PlotData.of(empty)).get("t"));
  }

  /** The lists of whole numbers in the document, each by the name that it stands under. */
  private static Map<String, List<Long>> lists(String json) throws IOException {
    Map<String, List<Long>> found = new HashMap<>();
    String holder = "";
    try (JsonParser parser = new JsonFactory().createParser(json)) {
      while (parser.nextToken() != null) {
        if (parser.currentToken() == JsonToken.START_OBJECT && parser.currentName() != null) {
          holder = parser.currentName();
        }
        if (parser.currentToken() == JsonToken.START_ARRAY && parser.currentName() != null) {
          String name = parser.currentName().equals("v") ? holder : parser.currentName();
          found.put(name, numbers(parser));
        }
      }
    }
    return found;
  }

  private static List<Long> numbers(JsonParser parser) throws IOException {
    List<Long> numbers = new ArrayList<>();
    for (int depth = 1; depth > 0; ) {
      switch (parser.nextToken()) {
        case START_ARRAY -> depth++;
        case END_ARRAY -> depth--;
        case VALUE_NULL -> numbers.add(null);
        case VALUE_NUMBER_INT -> numbers.add(parser.getLongValue());
        default -> {
          // Words between the numbers are another test's matter.
        }
      }
    }
    return numbers;
  }
}
