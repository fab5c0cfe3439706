package dev.tankwright.controller;

import static dev.tankwright.trace.CountedAssertions.assertEquals;
import static dev.tankwright.trace.CountedAssertions.assertFalse;
import static dev.tankwright.trace.CountedAssertions.assertTrue;

import dev.tankwright.controller.board.Command;
import dev.tankwright.controller.board.Fault;
import dev.tankwright.controller.board.NoticeKind;
import dev.tankwright.controller.board.Outputs;
import dev.tankwright.controller.board.Parameter;
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

  @Test
  @DisplayName("a worse fault that time alone brings while locked out is shown in its scan")
  void worseFault() {
    ScanRig rig = ScanRig.selfTested().generatorFault(true).advance(400).expect(Phase.LOCKOUT);
    rig.generatorFault(false).lidContacts(true, true).advance(500);
    assertEquals(Fault.GENERATOR_FAULT, rig.outputs.panel.fault);
    assertEquals(Fault.LID_CONTRADICTION, rig.scan(10).outputs.panel.fault);
    rig.heaterCurrent(IdealBoard.Feedback.STUCK_ON).advance(500);
    assertEquals(Fault.LID_CONTRADICTION, rig.outputs.panel.fault);
    assertEquals(Fault.HEATER_RELAY_WELDED, rig.scan(10).outputs.panel.fault);
  }

  @Test
  @DisplayName(
      "a foil check that falls due between two scans that are alike is shown and announced")
  void foilFallsDue() {
    ScanRig rig = ScanRig.selfTested(ScanRig.PROFILE.with(Parameter.FOIL_INTERVAL, 600));
    rig.advance(598_990).scan(10);
    assertFalse(rig.outputs.panel.foilDue);
    rig.scan(10).expectNoted(NoticeKind.FOIL_DUE, 0);
    assertTrue(rig.outputs.panel.foilDue);
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
