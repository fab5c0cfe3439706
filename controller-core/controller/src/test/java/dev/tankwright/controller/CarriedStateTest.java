package dev.tankwright.controller;

import static dev.tankwright.trace.CountedAssertions.assertEquals;
import static dev.tankwright.trace.CountedAssertions.assertNull;
import static dev.tankwright.trace.CountedAssertions.assertTrue;

import dev.tankwright.controller.board.Command;
import dev.tankwright.controller.board.DeviceProfile;
import dev.tankwright.controller.board.Fault;
import dev.tankwright.controller.board.Outputs;
import dev.tankwright.controller.board.Parameter;
import dev.tankwright.controller.board.Phase;
import dev.tankwright.controller.board.Refusal;
import dev.tankwright.controller.board.StateWords;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** What outlasts a capture and a restore, part by part, in a controller that was just made. */
class CarriedStateTest {
  private final DeviceProfile profile = DeviceProfile.sixLitre();
  private final StateWords state = new StateWords(CleanerController.STATE_WORDS);
  private final Outputs outputs = new Outputs();

  @Test
  @DisplayName("a refusal, and that there is none")
  void refusal() {
    ScanRig rig = ScanRig.selfTested().press(Command.PAUSE);
    scan(restored(rig), rig);
    assertEquals(Refusal.NOT_IN_THIS_PHASE, outputs.panel.refusal);
    rig.press(Command.FRESH_SOLUTION);
    scan(restored(rig), rig);
    assertNull(outputs.panel.refusal);
  }

  @Test
  @DisplayName("a command that is new in the first scan acts, the one that stood there does not")
  void newCommand() {
    ScanRig rig = ScanRig.in(Phase.HEATING);
    CleanerController fresh = restored(rig);
    rig.inputs.millis += 10;
    scan(fresh, rig);
    assertEquals(Phase.HEATING, outputs.panel.phase);
    rig.inputs.command = Command.PAUSE;
    rig.inputs.commandSequence++;
    rig.inputs.millis += 10;
    scan(fresh, rig);
    assertEquals(Phase.PAUSED, outputs.panel.phase);
  }

  @Test
  @DisplayName("how long a pause has lasted")
  void pause() {
    ScanRig rig = ScanRig.in(Phase.PAUSED, profile.with(Parameter.PAUSE_MAXIMUM, 10_000));
    CleanerController fresh = restored(rig.advance(9_000));
    scan(fresh, rig);
    for (int ms = 0; ms < 1_000; ms += 10) {
      assertEquals(Phase.PAUSED, outputs.panel.phase, "after " + ms + " ms");
      rig.inputs.millis += 10;
      scan(fresh, rig);
    }
    rig.inputs.millis += 10;
    scan(fresh, rig);
    assertEquals(Phase.STANDBY, outputs.panel.phase);
  }

  @Test
  @DisplayName("for how long the rest has been running out of the drain")
  void drain() {
    int tail = profile.get(Parameter.DRAIN_TAIL);
    ScanRig rig = ScanRig.in(Phase.DRAINING).level(false, false).advance(tail - 100);
    CleanerController fresh = restored(rig);
    for (int ms = 0; ms < 110; ms += 10) {
      scan(fresh, rig);
      assertEquals(Phase.DRAINING, outputs.panel.phase, "after " + ms + " ms");
      rig.inputs.millis += 10;
    }
    scan(fresh, rig);
    assertEquals(Phase.STANDBY, outputs.panel.phase);
  }

  @Test
  @DisplayName("for how many scans the counter has stood still")
  void standingCounter() {
    ScanRig rig = ScanRig.selfTested().scan(0).scan(0).scan(0).scan(0).expectNoFault();
    scan(restored(rig), rig);
    assertEquals(Fault.CLOCK_FAULT, outputs.panel.fault, "the fifth scan without a step");
  }

  @Test
  @DisplayName("not the counter itself: wherever it stands after a restore, it has not jumped")
  void counterIsTakenUpAnew() {
    ScanRig rig = ScanRig.selfTested();
    rig.controller.capture(state);
    rig.advance(1_000);
    rig.inputs.millis += 1_000_000;
    rig.controller.restore(state, rig.inputs);
    rig.scan(10).expectNoFault().expect(Phase.STANDBY);
  }

  @Test
  @DisplayName("how long the buzzer still sounds")
  void beep() {
    ScanRig rig = ScanRig.selfTested().press(Command.PAUSE);
    CleanerController fresh = restored(rig);
    scan(fresh, rig);
    assertTrue(outputs.buzzer);
    for (int ms = 0; ms < 190; ms += 10) {
      rig.inputs.millis += 10;
      scan(fresh, rig);
      assertTrue(outputs.buzzer, "after " + ms + " ms");
    }
    rig.inputs.millis += 10;
    scan(fresh, rig);
    assertEquals(false, outputs.buzzer);
  }

  @Test
  @DisplayName("that the heater is on within the dead band, where it stays as it was")
  void heaterWithinTheDeadBand() {
    ScanRig heated = ScanRig.in(Phase.HEATING).warm(40).scan(10).expectDriven(true, true, false);
    scan(restored(heated), heated);
    assertTrue(outputs.heaterRelay);
    ScanRig rested = ScanRig.in(Phase.DEGASSING).warm(40).scan(10).expectDriven(false, true, false);
    scan(restored(rested), rested);
    assertEquals(false, outputs.heaterRelay);
  }

  private CleanerController restored(ScanRig rig) {
    rig.controller.capture(state);
    CleanerController fresh = new CleanerController(rig.profile);
    fresh.restore(state, rig.inputs);
    return fresh;
  }

  private void scan(CleanerController controller, ScanRig rig) {
    controller.scan(rig.inputs, outputs);
  }
}
