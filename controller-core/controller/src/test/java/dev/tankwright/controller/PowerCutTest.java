package dev.tankwright.controller;

import static dev.tankwright.trace.CountedAssertions.assertEquals;
import static dev.tankwright.trace.CountedAssertions.assertFalse;
import static dev.tankwright.trace.CountedAssertions.assertTrue;

import dev.tankwright.controller.board.Command;
import dev.tankwright.controller.board.CycleCause;
import dev.tankwright.controller.board.Fault;
import dev.tankwright.controller.board.FoilVerdict;
import dev.tankwright.controller.board.NoticeKind;
import dev.tankwright.controller.board.Parameter;
import dev.tankwright.controller.board.Phase;
import dev.tankwright.controller.board.Programme;
import dev.tankwright.controller.board.Recipe;
import dev.tankwright.controller.board.Refusal;
import dev.tankwright.controller.board.StateWords;
import dev.tankwright.trace.Requirement;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The controller loses its supply and comes back with what was kept. */
class PowerCutTest {
  @ParameterizedTest
  @EnumSource(
      value = Phase.class,
      names = {"HEATING", "DEGASSING", "CLEANING", "PAUSED"})
  @Requirement("SR-24")
  @DisplayName("a cycle comes back held, with everything off, and goes on when it is resumed")
  void comesBackHeld(Phase phase) {
    ScanRig rig = ScanRig.in(phase).advance(5_000);
    int left = rig.outputs.panel.remainingMs;
    rig.cutPower(60).advance(1_000).expect(Phase.PAUSED).expectNothingDriven();
    assertEquals(left, rig.outputs.panel.remainingMs, "what is left outlasts the power");
    assertEquals(
        1, rig.of(NoticeKind.CYCLE_PAUSED, CycleCause.POWER.ordinal()).size(), "by loss of power");
    rig.advance(60_000).expect(Phase.PAUSED).expectNothingDriven();
    rig.press(Command.RESUME).expect(Phase.HEATING);
    rig.warm(ScanRig.WARM).until(Phase.COMPLETE, 60_000);
    assertEquals(1, rig.controller.cycleTally().number(), "it is still the first cycle");
  }

  @Test
  @Requirement("SR-24")
  @DisplayName("the operator may also stop the cycle that lost its power")
  void stopped() {
    ScanRig rig = ScanRig.in(Phase.CLEANING).cutPower(1).advance(1_000).expect(Phase.PAUSED);
    rig.press(Command.STOP)
        .expect(Phase.STANDBY)
        .expectNoted(NoticeKind.CYCLE_STOPPED, CycleCause.OPERATOR.ordinal());
  }

  @Test
  @Requirement("SR-21")
  @DisplayName("the third loss of power in one cycle locks the device and ends the cycle")
  void threeCuts() {
    ScanRig rig = ScanRig.in(Phase.CLEANING);
    for (int cut = 1; cut <= 2; cut++) {
      rig.cutPower(10).advance(1_000).expect(Phase.PAUSED).expectNoFault();
      rig.press(Command.RESUME).until(Phase.CLEANING, 1_000);
    }
    rig.cutPower(10).until(Phase.LOCKOUT, 1_000).expectNothingDriven();
    assertEquals(Fault.POWER_CUTS_REPEATED, rig.outputs.panel.fault);
    rig.expectNoted(NoticeKind.CYCLE_INTERRUPTED, CycleCause.FAULT.ordinal());
    rig.expectResetAccepted(Fault.POWER_CUTS_REPEATED);
  }

  @Test
  @Requirement("SR-21")
  @DisplayName("losses of mains alone count as well, and the count begins anew with each cycle")
  void mainsCount() {
    ScanRig rig = ScanRig.in(Phase.CLEANING);
    for (int cut = 1; cut <= 2; cut++) {
      rig.mains(false).scan(10).mains(true).advance(100).expect(Phase.PAUSED);
      rig.press(Command.RESUME).until(Phase.CLEANING, 1_000);
    }
    rig.until(Phase.COMPLETE, 60_000).press(Command.ACKNOWLEDGE).start(ScanRig.SHORT);
    rig.until(Phase.CLEANING, 1_000).mains(false).scan(10).expect(Phase.PAUSED).expectNoFault();
  }

  @Test
  @Requirement({"SR-07", "SR-24"})
  @DisplayName("a latched fault outlasts the power, and so does the need for service")
  void latchedFault() {
    ScanRig rig = ScanRig.in(Phase.CLEANING);
    rig.heaterCurrent(IdealBoard.Feedback.STUCK_ON).advance(510);
    rig.expectTrip(Fault.HEATER_RELAY_WELDED).heaterCurrent(IdealBoard.Feedback.FOLLOWS);
    rig.cutPower(3_600).scan(10).expect(Phase.LOCKOUT).expectNothingDriven();
    assertFalse(rig.outputs.cutOffRelay);
    rig.expectResetRefused(Refusal.SERVICE_NEEDED);
  }

  @Test
  @Requirement("SR-24")
  @DisplayName("ages go on while the power is off: the solution's, and the rest since degassing")
  void agesGoOn() {
    ScanRig rig = ScanRig.in(Phase.COMPLETE).press(Command.ACKNOWLEDGE);
    assertFalse(rig.outputs.panel.degassingRequired);
    rig.cutPower(3 * 3_600).advance(1_000).expect(Phase.STANDBY);
    assertFalse(rig.outputs.panel.degassingRequired);
    rig.cutPower(2 * 3_600).advance(1_000);
    assertTrue(rig.outputs.panel.degassingRequired, "four hours of rest");
    assertFalse(rig.outputs.panel.solutionDue);
    rig.cutPower(3 * 3_600).advance(1_000);
    assertTrue(rig.outputs.panel.solutionDue, "eight hours of age");
  }

  @Test
  @DisplayName("foil check and working day go on while the power is off")
  void calendarGoesOn() {
    ScanRig rig = ScanRig.in(Phase.COMPLETE).press(Command.ACKNOWLEDGE);
    rig.cutPower(9 * 3_600).advance(1_000);
    assertFalse(rig.outputs.panel.drainDue);
    rig.cutPower(3_600).advance(1_000);
    assertTrue(rig.outputs.panel.drainDue, "ten hours of day");
    assertFalse(rig.outputs.panel.foilDue);
    rig.cutPower(90 * 86_400).advance(1_000);
    assertTrue(rig.outputs.panel.foilDue, "ninety days");
    rig.press(Command.DRAIN).level(false, false).until(Phase.STANDBY, 70_000).advance(10);
    assertFalse(rig.outputs.panel.drainDue);
    rig.level(true, true).advance(2_000).start(new Recipe(Programme.FOIL_CHECK, 40_000, 100, 100));
    rig.until(Phase.COMPLETE, 1_000).press(Command.ACKNOWLEDGE, FoilVerdict.MARKED).advance(10);
    assertFalse(rig.outputs.panel.foilDue);
  }

  @Test
  @DisplayName("counters, the number of the cycle and its record outlast the power")
  void countersOutlast() {
    ScanRig rig = ScanRig.in(Phase.COMPLETE).press(Command.ACKNOWLEDGE);
    long sounded = rig.controller.cycleTally().ultrasoundMs();
    rig.cutPower(60).advance(1_000).start(ScanRig.SHORT).until(Phase.COMPLETE, 60_000);
    assertEquals(2, rig.controller.cycleTally().number());
    assertEquals(2, rig.controller.logbook().cycles());
    assertTrue(rig.controller.logbook().ultrasoundSeconds() >= sounded / 1_000);
    rig.cutPower(60).advance(1_000);
    assertEquals(2, rig.controller.logbook().cycles());
  }

  @Test
  @DisplayName("keeping is wanted at every change that matters, and every 10 s of a cycle")
  void wantsKeeping() {
    ScanRig rig = ScanRig.selfTested();
    keep(rig);
    assertFalse(rig.controller.wantsKeeping());
    rig.start(ScanRig.SHORT);
    assertTrue(rig.controller.wantsKeeping(), "a change of phase");
    keep(rig);
    rig.advance(9_990);
    assertFalse(rig.controller.wantsKeeping());
    rig.advance(10);
    assertTrue(rig.controller.wantsKeeping(), "10 s of a cycle");
    assertEquals(rig.controller.keptWords(), keep(rig).size(), "as many words as were announced");
    rig.press(Command.PAUSE);
    keep(rig);
    rig.press(Command.STOP);
    keep(rig);
    rig.lid(false).press(Command.START);
    assertTrue(rig.controller.wantsKeeping(), "a latched fault");
  }

  @Test
  @DisplayName("the host's number outlasts the power")
  void eventSequence() {
    ScanRig rig = ScanRig.selfTested();
    assertEquals(0, rig.controller.eventSequence());
    rig.controller.eventSequence(41);
    rig.cutPower(1);
    assertEquals(41, rig.controller.eventSequence());
  }

  @Test
  @Requirement("SR-24")
  @DisplayName("a limit of one loss of power ends the cycle at the first")
  void firstCut() {
    ScanRig rig = ScanRig.in(Phase.HEATING, ScanRig.PROFILE.with(Parameter.POWER_CUTS_MAXIMUM, 1));
    rig.cutPower(1).until(Phase.LOCKOUT, 1_000);
    assertEquals(Fault.POWER_CUTS_REPEATED, rig.outputs.panel.fault);
  }

  @ParameterizedTest(name = "by a lockout: {0}")
  @ValueSource(booleans = {false, true})
  @Requirement("SR-24")
  @DisplayName("a foil check that lost its power, or was locked out, still takes its verdict")
  void verdictOutlasts(boolean byLockout) {
    ScanRig rig = ScanRig.selfTested().warm(ScanRig.WARM);
    rig.start(new Recipe(Programme.FOIL_CHECK, 40_000, 1_000, 1_000)).until(Phase.COMPLETE, 9_000);
    if (byLockout) {
      rig.controlCounts(4_095).advance(200).expect(Phase.LOCKOUT).warm(ScanRig.WARM).scan(10);
      rig.press(Command.RESET).expect(Phase.SELF_TEST);
    } else {
      rig.cutPower(60);
    }
    rig.advance(1_000).expect(Phase.COMPLETE).expectNothingDriven();
    rig.press(Command.ACKNOWLEDGE, FoilVerdict.NONE).expect(Phase.COMPLETE);
    rig.press(Command.ACKNOWLEDGE, FoilVerdict.MARKED).expect(Phase.STANDBY);
    rig.expectNoted(NoticeKind.FOIL_CHECKED, FoilVerdict.MARKED.ordinal());
    assertEquals(1, rig.controller.logbook().foilChecks());
    assertEquals(1, rig.controller.logbook().cycles(), "completed once");
  }

  @Test
  @Requirement("SR-24")
  @DisplayName("the kept words have a layout of a version that no blank memory reads as")
  void layoutVersion() {
    ScanRig rig = ScanRig.in(Phase.CLEANING);
    int words = rig.controller.keptWords();
    assertTrue(rig.controller.keptVersion() > 0, "0 is what a cleared memory reads");
    assertEquals(keep(rig).size(), words);
  }

  @Test
  @DisplayName("a cycle's age counts the time without power, and what was tallied just before it")
  void tallyGoesOn() {
    ScanRig rig = ScanRig.in(Phase.CLEANING).advance(5_000);
    long started = rig.controller.cycleTally().startedMs();
    long age = rig.controller.uptimeMs() - started;
    long sounded = rig.controller.cycleTally().phaseMs(Phase.CLEANING);
    rig.advance(3_000).cutPower(60);
    assertEquals(-(age + 3_000 + 60_000), rig.controller.cycleTally().startedMs());
    assertEquals(sounded + 3_000, rig.controller.cycleTally().phaseMs(Phase.CLEANING));
  }

  @Test
  @DisplayName("a solution that was due before the power went is not announced as due again")
  void dueIsAnnouncedOnce() {
    ScanRig rig = ScanRig.selfTested(ScanRig.PROFILE.with(Parameter.SOLUTION_AGE_MAXIMUM, 60_000));
    rig.advance(61_000).cutPower(60).advance(1_000);
    assertTrue(rig.outputs.panel.solutionDue);
    assertEquals(1, rig.of(NoticeKind.SOLUTION_DUE, 0).size());
  }

  private static StateWords keep(ScanRig rig) {
    StateWords kept = new StateWords(rig.controller.keptWords());
    kept.beginCapture();
    rig.controller.keep(kept);
    return kept;
  }
}
