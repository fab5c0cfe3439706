package dev.tankwright.report.campaign;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.tankwright.loop.Signal;
import dev.tankwright.loop.Trace;
import dev.tankwright.report.SampleRun;
import org.junit.jupiter.api.Test;

class TracePlotTest {

  @Test
  void losesNoPeakOfALongTrace() {
    Trace trace = new Trace();
    for (int row = 0; row <= 50_000; row++) {
      double value = row == 33_333 ? 90 : 20;
      trace.sample(row * 10L, signal -> value);
    }
    String path = path(trace, 0, 500_000);
    assertTrue(path.contains("V10V"), "the peak at 90 is drawn at height 10");
    assertTrue(path.length() < 20_000, path.length() + " characters");
  }

  @Test
  void breaksTheLineWhereThereIsNoNumber() {
    Trace trace = new Trace();
    for (int row = 0; row <= 10; row++) {
      double value = row == 5 ? Double.NaN : 50;
      trace.sample(row * 100L, signal -> value);
    }
    String path = path(trace, 0, 1_000);
    assertEquals(2, path.split("M", -1).length - 1, path);
    assertFalse(path.contains("NaN"));
  }

  @Test
  void drawsUpToBothEdgesOfAWindow() {
    Trace trace = new Trace();
    for (int row = 0; row <= 10; row++) {
      trace.sample(row * 1_000L, signal -> 50);
    }
    String path = path(trace, 2_500, 4_500);
    assertTrue(path.startsWith("M0 50"), path);
    assertTrue(path.endsWith("L1000 50"), path);
  }

  @Test
  void keepsASwitchThatWasOnForOneScanOnly() {
    Trace trace = new Trace();
    for (int row = 0; row <= 1_000; row++) {
      double on = row == 700 ? 1 : 0;
      trace.sample(row * 10L, signal -> on);
    }
    assertEquals("M700 0h1v10H700z", TraceThinning.bands(trace, Signal.HEATER, 0, 10_000));
  }

  @Test
  void saysInWordsWhichPhasesItShows() {
    String plot = TracePlot.of(SampleRun.of(), 0, SampleRun.END, "Whole run");
    assertTrue(plot.contains("Heating from 0:10"), plot);
    assertTrue(plot.contains(">Heating</text>"));
    assertTrue(plot.contains("mark-fault"));
  }

  private static String path(Trace trace, long from, long to) {
    return TraceThinning.path(
        trace, Signal.LIQUID_TEMPERATURE, from, to, value -> 100 - (int) value);
  }
}
