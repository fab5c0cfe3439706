package dev.tankwright.controller.sequence;

import static dev.tankwright.trace.CountedAssertions.assertEquals;
import static dev.tankwright.trace.CountedAssertions.assertFalse;
import static dev.tankwright.trace.CountedAssertions.assertTrue;

import dev.tankwright.controller.Noted;
import dev.tankwright.controller.ScanRig;
import dev.tankwright.controller.board.Command;
import dev.tankwright.controller.board.FoilVerdict;
import dev.tankwright.controller.board.NoticeKind;
import dev.tankwright.controller.board.Parameter;
import dev.tankwright.controller.board.Phase;
import dev.tankwright.controller.board.Programme;
import dev.tankwright.controller.board.Recipe;
import dev.tankwright.controller.board.Refusal;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class CycleTest {
  private static final int HEAT_UP = 60_000;

  @ParameterizedTest
  @EnumSource(Programme.class)
  @DisplayName("every programme runs its phases, each for its time, and waits to be acknowledged")
  void runsItsPhases(Programme programme) {
    Recipe recipe = Recipe.standard(programme);
    boolean cleans = recipe.cleanMs() > 0;
    ScanRig rig = ScanRig.selfTested().press(Command.START, programme).expect(Phase.HEATING);
    rig.expectNoted(NoticeKind.CYCLE_STARTED, programme.ordinal()).expectDriven(true, false, false);
    rig.advance(HEAT_UP).warm(ScanRig.WARM).until(Phase.COMPLETE, 3_600_000);

    List<Phase> passed = new ArrayList<>(List.of(Phase.HEATING, Phase.DEGASSING));
    if (cleans) {
      passed.add(Phase.CLEANING);
    }
    passed.add(Phase.COMPLETE);
    assertEquals(passed, phasesSinceStart(rig));
    CycleTally tally = rig.controller.cycleTally();
    assertEquals(HEAT_UP + 10, tally.phaseMs(Phase.HEATING));
    assertEquals(recipe.degasMs(), tally.phaseMs(Phase.DEGASSING));
    assertEquals(recipe.cleanMs(), tally.phaseMs(Phase.CLEANING));
    // Degassing pulses: 6 s of every 10 s.
    assertEquals(recipe.degasMs() * 6L / 10 + recipe.cleanMs(), tally.ultrasoundMs());
    assertTrue(tally.isDegassed());
    assertEquals(0, tally.interruptions());

    rig.expectNothingDriven().advance(600_000).expect(Phase.COMPLETE).expectNothingDriven();
    rig.press(Command.ACKNOWLEDGE, FoilVerdict.MARKED).expectAccepted().expect(Phase.STANDBY);
  }

  @Test
  @DisplayName("remaining time counts what is degassed and cleaned, and never grows")
  void remainingTime() {
    ScanRig rig = ScanRig.selfTested().start(ScanRig.SHORT);
    assertEquals(50_000, rig.outputs.panel.remainingMs);
    rig.advance(10_000);
    assertEquals(50_000, rig.outputs.panel.remainingMs, "heating up is not counted");
    rig.warm(ScanRig.WARM).advance(10);
    for (int left = 49_990; left > 0; left -= 10) {
      rig.scan(10);
      assertEquals(left, rig.outputs.panel.remainingMs);
    }
    rig.scan(10).expect(Phase.COMPLETE);
    assertEquals(0, rig.outputs.panel.remainingMs);
    assertEquals(0, rig.outputs.panel.setpointMilliC);
  }

  @Test
  @DisplayName("degassing is owed from power-up, done once, and owed again after fresh solution")
  void degassingRequired() {
    ScanRig rig = ScanRig.selfTested();
    assertTrue(rig.outputs.panel.degassingRequired);
    rig.start(ScanRig.SHORT).warm(ScanRig.WARM).until(Phase.COMPLETE, 60_000);
    assertFalse(rig.outputs.panel.degassingRequired);
    rig.press(Command.ACKNOWLEDGE).expectAccepted();

    rig.start(ScanRig.SHORT).advance(10).expect(Phase.CLEANING);
    assertFalse(rig.controller.cycleTally().isDegassed());
    rig.press(Command.STOP).press(Command.FRESH_SOLUTION);
    rig.expectNoted(NoticeKind.SOLUTION_FILLED, 0);
    assertTrue(rig.outputs.panel.degassingRequired);
    rig.start(ScanRig.SHORT).advance(10).expect(Phase.DEGASSING);
  }

  @Test
  @DisplayName("degassing is owed again after four hours without ultrasound, not before")
  void degassingRequiredAfterRest() {
    ScanRig rig = ScanRig.in(Phase.COMPLETE).press(Command.ACKNOWLEDGE).advance(14_399_900);
    assertFalse(rig.outputs.panel.degassingRequired);
    rig.advance(100);
    assertTrue(rig.outputs.panel.degassingRequired);
  }

  @ParameterizedTest
  @EnumSource(
      value = Programme.class,
      names = {"DEGAS_ONLY", "FOIL_CHECK"})
  @DisplayName("degassing alone and the foil check degas whether or not it is owed")
  void degasAnyway(Programme programme) {
    ScanRig rig = ScanRig.in(Phase.COMPLETE).press(Command.ACKNOWLEDGE);
    assertFalse(rig.outputs.panel.degassingRequired);
    rig.press(Command.START, programme).advance(10).expect(Phase.DEGASSING);
  }

  @ParameterizedTest
  @EnumSource(
      value = FoilVerdict.class,
      names = {"MARKED", "UNMARKED"})
  @DisplayName("a foil check is acknowledged with a verdict only, and the verdict is announced")
  void foilVerdict(FoilVerdict verdict) {
    Recipe quick = new Recipe(Programme.FOIL_CHECK, 40_000, 1_000, 1_000);
    ScanRig rig = ScanRig.selfTested().start(quick).warm(ScanRig.WARM);
    rig.until(Phase.COMPLETE, 5_000).press(Command.ACKNOWLEDGE, FoilVerdict.NONE);
    rig.expectRefused(Command.ACKNOWLEDGE, Refusal.VERDICT_MISSING).expect(Phase.COMPLETE);
    rig.inputs.foilVerdict = null;
    rig.press(Command.ACKNOWLEDGE);
    rig.expectRefused(Command.ACKNOWLEDGE, Refusal.VERDICT_MISSING).expect(Phase.COMPLETE);
    rig.press(Command.ACKNOWLEDGE, verdict).expectAccepted().expect(Phase.STANDBY);
    rig.expectNoted(NoticeKind.FOIL_CHECKED, verdict.ordinal());
  }

  @Test
  @DisplayName("the tally keeps measured extremes, without what a broken sensor showed")
  void tallyExtremes() {
    ScanRig rig = ScanRig.in(Phase.DEGASSING).warm(39.5).advance(10_000).warm(41.5);
    rig.until(Phase.CLEANING, 15_000).controlCounts(4_095).until(Phase.LOCKOUT, 200);
    CycleTally tally = rig.controller.cycleTally();
    assertTrue(tally.hasTemperatures());
    assertEquals(39_500, tally.minimumMilliC(), 25);
    assertEquals(41_500, tally.maximumMilliC(), 25);
    assertEquals(40_500, tally.meanMilliC(), 50);
    assertTrue(tally.faultBits() != 0);
  }

  @Test
  @DisplayName(
      "a drain that was stopped waits its whole time for the rest to run out the next time")
  void drainedAnew() {
    ScanRig rig = ScanRig.in(Phase.DRAINING).level(false, false).advance(50_000);
    rig.press(Command.STOP).expect(Phase.STANDBY).advance(5_000);
    rig.press(Command.DRAIN).advance(59_900).expect(Phase.DRAINING).until(Phase.STANDBY, 200);
    rig.expectNoted(NoticeKind.SOLUTION_DRAINED, 0);
  }

  @Test
  @DisplayName("a drained tank owes degassing again, and both are announced in their scans")
  void drainedAndDegassed() {
    ScanRig rig = ScanRig.in(Phase.DEGASSING);
    rig.until(Phase.CLEANING, 20_010).expectNoted(NoticeKind.SOLUTION_DEGASSED, 0);
    rig.press(Command.STOP).advance(10);
    assertFalse(rig.outputs.panel.degassingRequired);
    rig.press(Command.DRAIN).level(false, false).until(Phase.STANDBY, 60_020);
    rig.expectNoted(NoticeKind.SOLUTION_DRAINED, 0);
    assertTrue(rig.outputs.panel.degassingRequired);
  }

  @Test
  @DisplayName("the setpoint is reached at the dead band below it, and not a milli-degree earlier")
  void warmAtTheDeadBand() {
    ScanRig rig = ScanRig.selfTested().warm(40).advance(10);
    int bath = rig.outputs.panel.temperatureMilliC;
    int reached = bath + rig.profile.get(Parameter.HYSTERESIS);
    rig.start(new Recipe(Programme.MEDIUM, reached + 1, 1_000, 1_000)).advance(100);
    rig.expect(Phase.HEATING).press(Command.STOP);
    rig.start(new Recipe(Programme.MEDIUM, reached, 1_000, 1_000)).advance(10);
    rig.expect(Phase.DEGASSING);
  }

  private static List<Phase> phasesSinceStart(ScanRig rig) {
    return rig.notes.stream()
        .filter(n -> n.kind() == NoticeKind.PHASE_CHANGED)
        .map(Noted::second)
        .map(Phase::of)
        .skip(1)
        .toList();
  }
}
