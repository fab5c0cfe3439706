package dev.tankwright.controller;

import static dev.tankwright.trace.CountedAssertions.assertEquals;
import static dev.tankwright.trace.CountedAssertions.assertFalse;
import static dev.tankwright.trace.CountedAssertions.assertTrue;

import dev.tankwright.controller.board.Command;
import dev.tankwright.controller.board.DeviceProfile;
import dev.tankwright.controller.board.Fault;
import dev.tankwright.controller.board.FoilVerdict;
import dev.tankwright.controller.board.NoticeKind;
import dev.tankwright.controller.board.Parameter;
import dev.tankwright.controller.board.Phase;
import dev.tankwright.controller.board.Programme;
import dev.tankwright.controller.board.Recipe;
import dev.tankwright.controller.board.Refusal;
import dev.tankwright.trace.Requirement;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** A controller that was just made takes over in the middle of something. */
class HandOverTest {
  private static final DeviceProfile WARMING =
      ScanRig.PROFILE.with(Parameter.KEEP_WARM, 1).with(Parameter.KEEP_WARM_MAXIMUM, 60_000);

  @Test
  @DisplayName("a self test that is half passed")
  void selfTest() {
    ScanRig rig = ScanRig.poweredUp(ScanRig.PROFILE).advance(300).handOver().advance(200);
    rig.expect(Phase.SELF_TEST).scan(10).expect(Phase.STANDBY);
  }

  @Test
  @Requirement("SR-01")
  @DisplayName("a lid that has just been closed counts as closed after the rest of its time")
  void lid() {
    ScanRig rig = ScanRig.selfTested().lid(false).scan(10).lid(true).advance(30).handOver();
    rig.advance(20).start(ScanRig.SHORT).expect(Phase.HEATING);
    rig = ScanRig.selfTested().lid(false).scan(10).handOver().lid(true).advance(20);
    rig.start(ScanRig.SHORT).expectRefused(Command.START, Refusal.LID_OPEN);
  }

  @ParameterizedTest
  @EnumSource(
      value = Phase.class,
      names = {"HEATING", "DEGASSING", "CLEANING"})
  @DisplayName("a cycle: what is left of it, what it returns to, what it holds")
  void cycle(Phase phase) {
    ScanRig rig = ScanRig.in(phase).advance(3_000);
    int left = rig.outputs.panel.remainingMs;
    rig.handOver().press(Command.PAUSE).handOver().advance(1_000).expect(Phase.PAUSED);
    rig.press(Command.RESUME).expect(phase);
    assertEquals(left, rig.outputs.panel.remainingMs);
    assertEquals(40_000, rig.outputs.panel.setpointMilliC);
    rig.handOver().warm(ScanRig.WARM).until(Phase.COMPLETE, 60_000);
  }

  @Test
  @DisplayName("the pulses of degassing and the sweep of cleaning, wherever they stand")
  void ultrasound() {
    ScanRig pulsing = ScanRig.in(Phase.DEGASSING).advance(5_000).handOver().advance(990);
    pulsing.expectDriven(false, true, false).scan(10).expectNothingDriven();
    ScanRig sweeping = ScanRig.in(Phase.CLEANING).advance(200);
    int hertz = sweeping.outputs.driveFrequencyHz;
    sweeping.handOver().advance(10);
    assertEquals(hertz + 40, sweeping.outputs.driveFrequencyHz, 1.0);
  }

  @Test
  @DisplayName("the switching period of the proportional-integral regulation")
  void proportionalIntegral() {
    DeviceProfile profile = ScanRig.PROFILE.with(Parameter.CONTROL_MODE, 1);
    ScanRig rig = ScanRig.selfTested(profile).warm(39).start(ScanRig.SHORT);
    rig.advance(4_000).expectDriven(true, false, false).handOver().advance(500);
    rig.expectDriven(true, false, false).advance(1_500).expectNothingDriven();
    rig.handOver().advance(3_000).expectNothingDriven();
  }

  @Test
  @DisplayName("how the solution is: degassed, rested, aged, below its minimum")
  void solution() {
    DeviceProfile quick =
        ScanRig.PROFILE
            .with(Parameter.REST_MAXIMUM, 120_000)
            .with(Parameter.SOLUTION_AGE_MAXIMUM, 100_000);
    ScanRig rig = ScanRig.in(Phase.COMPLETE, quick).press(Command.ACKNOWLEDGE).handOver();
    rig.scan(10);
    assertFalse(rig.outputs.panel.degassingRequired);
    rig.advance(40_000).handOver().advance(60_000);
    assertTrue(rig.outputs.panel.solutionDue, "aged");
    assertFalse(rig.outputs.panel.degassingRequired);
    rig.handOver().advance(20_000);
    assertTrue(rig.outputs.panel.degassingRequired, "rested");

    rig = ScanRig.in(Phase.COMPLETE).press(Command.ACKNOWLEDGE).level(false, false).advance(100);
    rig.handOver().level(true, true).advance(20);
    assertTrue(rig.outputs.panel.degassingRequired, "filled up again");
  }

  @Test
  @DisplayName("that the solution is kept warm, and for how long it has been")
  void keepWarm() {
    ScanRig rig = ScanRig.in(Phase.COMPLETE, WARMING).warm(39).advance(30_000).handOver();
    rig.advance(29_000).expectDriven(true, false, false);
    assertTrue(rig.outputs.panel.keepingWarm);
    rig.advance(1_100).expectNothingDriven();
    assertFalse(rig.outputs.panel.keepingWarm);
  }

  @Test
  @DisplayName("that a verdict on the foil is due")
  void foilVerdict() {
    Recipe quick = new Recipe(Programme.FOIL_CHECK, 40_000, 1_000, 1_000);
    ScanRig rig = ScanRig.selfTested().start(quick).handOver().warm(ScanRig.WARM);
    rig.until(Phase.COMPLETE, 5_000).handOver().press(Command.ACKNOWLEDGE, FoilVerdict.NONE);
    rig.expectRefused(Command.ACKNOWLEDGE, Refusal.VERDICT_MISSING);
    rig.press(Command.ACKNOWLEDGE, FoilVerdict.MARKED).expect(Phase.STANDBY);
  }

  @Test
  @Requirement("SR-21")
  @DisplayName("how often the cycle has lost its power")
  void powerCuts() {
    ScanRig rig = ScanRig.in(Phase.CLEANING);
    for (int cut = 1; cut <= 2; cut++) {
      rig.mains(false).scan(10).mains(true).advance(100).handOver().press(Command.RESUME);
      rig.until(Phase.CLEANING, 1_000);
    }
    rig.mains(false).scan(10).expect(Phase.LOCKOUT).expectNothingDriven();
    assertEquals(Fault.POWER_CUTS_REPEATED, rig.outputs.panel.fault);
  }

  @Test
  @Requirement("SR-03")
  @DisplayName("a lockout: its fault, its open cut-off relay, its alarm")
  void lockout() {
    ScanRig rig = ScanRig.in(Phase.LOCKOUT).handOver().scan(10);
    assertEquals(Fault.CONTROL_SENSOR_OPEN, rig.outputs.panel.fault);
    assertFalse(rig.outputs.cutOffRelay);
    assertTrue(rig.outputs.buzzer);
    rig.expect(Phase.LOCKOUT).expectNothingDriven();
    assertEquals(1, rig.of(NoticeKind.FAULT_RAISED, Fault.CONTROL_SENSOR_OPEN.ordinal()).size());
    rig.expectResetAccepted(Fault.CONTROL_SENSOR_OPEN);
  }

  @Test
  @DisplayName("that the beep of a phase is over")
  void beepIsOver() {
    ScanRig rig = ScanRig.in(Phase.PAUSED).advance(1_000).handOver().scan(10);
    assertFalse(rig.outputs.buzzer);
  }

  @Test
  @DisplayName("the level of the watchdog's pin")
  void watchdog() {
    for (int scans = 0; scans < 2; scans++) {
      ScanRig rig = ScanRig.selfTested().scan(10);
      boolean before = rig.outputs.watchdogPulse;
      rig.handOver().scan(10);
      assertEquals(!before, rig.outputs.watchdogPulse);
    }
  }
}
