package dev.tankwright.controller.sequence;

import static dev.tankwright.trace.CountedAssertions.assertEquals;
import static dev.tankwright.trace.CountedAssertions.assertFalse;
import static dev.tankwright.trace.CountedAssertions.assertNull;
import static dev.tankwright.trace.CountedAssertions.assertTrue;

import dev.tankwright.controller.ScanRig;
import dev.tankwright.controller.board.Chemistry;
import dev.tankwright.controller.board.Command;
import dev.tankwright.controller.board.DeviceProfile;
import dev.tankwright.controller.board.Fault;
import dev.tankwright.controller.board.NoticeKind;
import dev.tankwright.controller.board.Parameter;
import dev.tankwright.controller.board.Phase;
import dev.tankwright.controller.board.Programme;
import dev.tankwright.controller.board.Recipe;
import dev.tankwright.controller.board.Refusal;
import dev.tankwright.trace.Requirement;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/**
 * Facts of the trade, common practice, no source: change the solution after eight hours, degas on
 * each fill, protein soil sets above about 45 °C, many enzymatic detergents ask for 27–43 °C.
 */
class SolutionTest {
  private final DeviceProfile quick = ScanRig.PROFILE.with(Parameter.SOLUTION_AGE_MAXIMUM, 60_000);

  @Test
  @DisplayName("eight hours is the age at which a solution is due, unless the profile says less")
  void eightHours() {
    assertEquals(8 * 3_600_000, DeviceProfile.sixLitre().get(Parameter.SOLUTION_AGE_MAXIMUM));
    ScanRig rig = ScanRig.selfTested(quick).press(Command.FRESH_SOLUTION);
    rig.advance(59_980);
    assertFalse(rig.outputs.panel.solutionDue);
    rig.scan(10).expectNoted(NoticeKind.SOLUTION_DUE, 0);
    rig.scan(10);
    assertTrue(rig.outputs.panel.solutionDue);
    rig.advance(10_000);
    assertEquals(1, rig.of(NoticeKind.SOLUTION_DUE, 0).size(), "announced once");
    rig.start(ScanRig.SHORT).expect(Phase.HEATING);
  }

  @Test
  @DisplayName("where the profile says so, a start over a solution that is due is refused")
  void refuses() {
    ScanRig rig = ScanRig.selfTested(quick.with(Parameter.SOLUTION_AGE_REFUSES, 1));
    rig.advance(60_000).start(ScanRig.SHORT).expect(Phase.STANDBY);
    rig.expectRefused(Command.START, Refusal.SOLUTION_DUE);
    rig.press(Command.FRESH_SOLUTION).start(ScanRig.SHORT).expect(Phase.HEATING);
  }

  @Test
  @DisplayName("a tank that was below its minimum and is filled again owes degassing")
  void refillOwesDegassing() {
    ScanRig rig = ScanRig.in(Phase.COMPLETE).press(Command.ACKNOWLEDGE);
    assertFalse(rig.outputs.panel.degassingRequired);
    rig.level(false, false).advance(100).level(true, true).advance(20);
    assertTrue(rig.outputs.panel.degassingRequired);
    rig.start(ScanRig.SHORT).until(Phase.DEGASSING, 100);
  }

  @Test
  @DisplayName("a tank that stays below its minimum owes nothing yet, however long")
  void lowOwesNothingYet() {
    ScanRig rig = ScanRig.in(Phase.COMPLETE).press(Command.ACKNOWLEDGE);
    rig.level(false, false).advance(5_000).lid(false).advance(1_000);
    assertFalse(rig.outputs.panel.degassingRequired);
    rig.level(true, false).advance(20);
    assertTrue(rig.outputs.panel.degassingRequired);
  }

  @Test
  @DisplayName("a rest counts from the last sound: sounding between two rests begins it anew")
  void soundEndsARest() {
    ScanRig rig = ScanRig.in(Phase.COMPLETE, ScanRig.PROFILE.with(Parameter.REST_MAXIMUM, 60_000));
    rig.advance(40_000).press(Command.ACKNOWLEDGE).start(ScanRig.SHORT);
    rig.until(Phase.CLEANING, 100).until(Phase.COMPLETE, 40_000);
    rig.advance(59_900);
    assertFalse(rig.outputs.panel.degassingRequired);
    rig.advance(200);
    assertTrue(rig.outputs.panel.degassingRequired);
  }

  @Test
  @DisplayName("a splash over the minimum contact is no refill")
  void splashIsNoRefill() {
    ScanRig rig = ScanRig.in(Phase.COMPLETE).press(Command.ACKNOWLEDGE);
    rig.level(false, true).advance(40).level(true, true).advance(20);
    assertFalse(rig.outputs.panel.degassingRequired);
  }

  @Test
  @DisplayName("a refill in a pause of cleaning: the cycle goes back, degasses, then cleans on")
  void refillInAPause() {
    ScanRig rig = ScanRig.in(Phase.COMPLETE).press(Command.ACKNOWLEDGE).start(ScanRig.SHORT);
    rig.until(Phase.CLEANING, 1_000).advance(10_000).lid(false).scan(10).expect(Phase.PAUSED);
    int left = rig.outputs.panel.remainingMs;
    rig.level(false, false).advance(1_000).level(true, true).advance(100).lid(true).advance(100);
    rig.press(Command.RESUME).expect(Phase.HEATING).scan(10).expect(Phase.DEGASSING);
    assertEquals(left + ScanRig.SHORT.degasMs(), rig.outputs.panel.remainingMs);
    rig.until(Phase.CLEANING, 30_000).until(Phase.COMPLETE, 30_000);
  }

  @Test
  @Requirement("SR-23")
  @DisplayName("enzymatic chemistry above 45 °C is warned of, and starts all the same")
  void proteinWarning() {
    Chemistry enzymatic = new Chemistry(true, Chemistry.NO_LIMIT);
    ScanRig rig = ScanRig.selfTested();
    rig.start(new Recipe(Programme.CUSTOM, 45_000, 1_000, 1_000, enzymatic));
    assertNull(rig.outputs.panel.fault);
    rig.expect(Phase.HEATING).press(Command.STOP);
    rig.start(new Recipe(Programme.CUSTOM, 45_001, 1_000, 1_000, enzymatic));
    rig.expect(Phase.HEATING);
    assertEquals(Fault.PROTEIN_MAY_SET, rig.outputs.panel.fault);
    rig.press(Command.STOP).start(new Recipe(Programme.CUSTOM, 50_000, 1_000, 1_000));
    assertNull(rig.outputs.panel.fault, "nothing was said of the chemistry");
  }

  @Test
  @Requirement("SR-23")
  @DisplayName("a setpoint above what the chemistry's own instructions allow is refused")
  void chemistryLimit() {
    Chemistry mild = new Chemistry(true, 43_000);
    ScanRig rig = ScanRig.selfTested();
    rig.start(new Recipe(Programme.CUSTOM, 43_001, 1_000, 1_000, mild)).expect(Phase.STANDBY);
    rig.expectRefused(Command.START, Refusal.TOO_HOT_FOR_CHEMISTRY);
    rig.start(new Recipe(Programme.CUSTOM, 43_000, 1_000, 1_000, mild)).expect(Phase.HEATING);
  }
}
