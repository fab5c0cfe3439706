package dev.tankwright.controller;

import static dev.tankwright.trace.CountedAssertions.assertEquals;
import static dev.tankwright.trace.CountedAssertions.assertFalse;
import static dev.tankwright.trace.CountedAssertions.assertTrue;

import dev.tankwright.controller.board.Command;
import dev.tankwright.controller.board.Outputs;
import dev.tankwright.controller.board.Phase;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** What a person hears and sees, and what the watchdog gets. */
class IndicationsTest {
  @Test
  @DisplayName("a pause beeps half a second, once")
  void pauseBeeps() {
    ScanRig rig = ScanRig.in(Phase.CLEANING).advance(10_000);
    assertFalse(rig.outputs.buzzer);
    assertEquals(500, heardMs(rig.press(Command.PAUSE), 60_000));
  }

  @Test
  @DisplayName("the end of a cycle beeps three seconds, once")
  void completionBeeps() {
    ScanRig rig = ScanRig.in(Phase.CLEANING);
    assertEquals(3_000, heardMs(rig.until(Phase.COMPLETE, 60_000), 60_000));
  }

  @Test
  @DisplayName("no other change of phase of a cycle beeps")
  void otherPhasesAreSilent() {
    ScanRig rig = ScanRig.selfTested();
    assertEquals(0, heardMs(rig.start(ScanRig.SHORT), 1_000));
    assertEquals(0, heardMs(rig.warm(ScanRig.WARM).scan(10).expect(Phase.DEGASSING), 1_000));
    assertEquals(0, heardMs(rig.until(Phase.CLEANING, 60_000), 1_000));
    assertEquals(0, heardMs(rig.press(Command.STOP).expect(Phase.STANDBY), 1_000));
  }

  @Test
  @DisplayName("the panel says whether the lid is open")
  void lidIsShown() {
    ScanRig rig = ScanRig.selfTested();
    assertFalse(rig.outputs.panel.lidOpen);
    assertTrue(rig.lid(false).scan(10).outputs.panel.lidOpen);
  }

  @Test
  @DisplayName("the watchdog gets an edge in every scan")
  void watchdogPulses() {
    ScanRig rig = ScanRig.selfTested();
    for (int i = 0; i < 10; i++) {
      boolean before = rig.outputs.watchdogPulse;
      assertEquals(!before, rig.scan(10).outputs.watchdogPulse);
    }
  }

  @Test
  @DisplayName("a heater at rest is not counted as heating")
  void restIsNotHeating() {
    ScanRig rig = ScanRig.in(Phase.DEGASSING).expectDriven(false, true, false);
    long heated = rig.controller.cycleTally().heaterMs();
    rig.advance(1_000);
    assertEquals(heated, rig.controller.cycleTally().heaterMs());
  }

  @Test
  @DisplayName("another outputs object is written as whole as the first one was")
  void otherOutputs() {
    ScanRig rig = ScanRig.in(Phase.CLEANING).advance(1_000);
    Outputs other = new Outputs();
    for (Outputs next : new Outputs[] {other, rig.outputs, other}) {
      rig.inputs.millis += 10;
      rig.controller.scan(rig.inputs, next);
      assertEquals(Phase.CLEANING, next.panel.phase);
      assertEquals(40_000, next.panel.setpointMilliC);
      assertTrue(next.ultrasoundEnable && next.panel.temperatureValid);
      assertEquals(rig.outputs.panel.temperatureMilliC, next.panel.temperatureMilliC);
    }
    assertEquals(rig.outputs.panel.remainingMs - 10, other.panel.remainingMs);
  }

  /** For how long the buzzer sounds from this scan on, ms. */
  private static int heardMs(ScanRig rig, int ms) {
    int heard = rig.outputs.buzzer ? 10 : 0;
    for (int passed = 0; passed < ms; passed += 10) {
      rig.scan(10);
      heard += rig.outputs.buzzer ? 10 : 0;
    }
    return heard;
  }
}
