package dev.tankwright.controller.sequence;

import static dev.tankwright.trace.CountedAssertions.assertEquals;
import static dev.tankwright.trace.CountedAssertions.assertFalse;
import static dev.tankwright.trace.CountedAssertions.assertNotNull;
import static dev.tankwright.trace.CountedAssertions.assertThrows;

import dev.tankwright.controller.ScanRig;
import dev.tankwright.controller.board.Command;
import dev.tankwright.controller.board.NoticeKind;
import dev.tankwright.controller.board.Phase;
import dev.tankwright.controller.board.Programme;
import dev.tankwright.controller.board.Recipe;
import dev.tankwright.trace.Requirement;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** Every line of the table of phases is driven by its cause, at the pins. */
class PhaseTableTest {
  private static final Map<Trigger, UnaryOperator<ScanRig>> CAUSES =
      Map.ofEntries(
          Map.entry(Trigger.SELF_TEST_PASSED, PhaseTableTest::await),
          Map.entry(Trigger.CYCLE_FOUND, PhaseTableTest::await),
          Map.entry(Trigger.VERDICT_FOUND, PhaseTableTest::await),
          Map.entry(Trigger.STARTED, rig -> rig.start(ScanRig.SHORT)),
          Map.entry(Trigger.WARM_AND_NOT_DEGASSED, PhaseTableTest::await),
          Map.entry(Trigger.WARM, rig -> rig.warm(ScanRig.WARM).advance(10)),
          Map.entry(Trigger.DEGASSED, PhaseTableTest::await),
          Map.entry(Trigger.DEGASSED_ONLY, PhaseTableTest::await),
          Map.entry(Trigger.CLEANED, PhaseTableTest::await),
          Map.entry(Trigger.PAUSE_ASKED, rig -> rig.press(Command.PAUSE)),
          Map.entry(Trigger.LID_OPENED, rig -> rig.lid(false).advance(10)),
          Map.entry(Trigger.RESUMED_HEATING, rig -> rig.press(Command.RESUME)),
          Map.entry(Trigger.RESUMED_DEGASSING, rig -> rig.press(Command.RESUME)),
          Map.entry(Trigger.RESUMED_CLEANING, rig -> rig.press(Command.RESUME)),
          Map.entry(Trigger.PAUSE_EXPIRED, PhaseTableTest::await),
          Map.entry(Trigger.STOP_ASKED, rig -> rig.press(Command.STOP)),
          Map.entry(Trigger.ACKNOWLEDGED, rig -> rig.press(Command.ACKNOWLEDGE)),
          Map.entry(Trigger.DRAIN_ASKED, rig -> rig.press(Command.DRAIN)),
          Map.entry(Trigger.DRAINED, rig -> await(rig.level(false, false))),
          Map.entry(Trigger.MAINS_LOST, rig -> rig.mains(false).advance(10)),
          Map.entry(Trigger.FAULT_LATCHED, PhaseTableTest::breakSensor),
          Map.entry(Trigger.RESET_ACCEPTED, rig -> rig.press(Command.RESET)));

  /** Warms the bath and waits for what comes after the phase. */
  private static ScanRig await(ScanRig rig) {
    Phase from = rig.phase();
    rig.warm(ScanRig.WARM);
    while (rig.phase() == from && rig.now() < 5_000_000) {
      rig.advance(10);
    }
    return rig;
  }

  private static ScanRig breakSensor(ScanRig rig) {
    return rig.cutOffCounts(4_095).advance(110);
  }

  @TestFactory
  @Requirement({"SR-01", "SR-03"})
  @DisplayName("every line of the table is driven by its cause, and only there")
  Stream<DynamicTest> everyLineIsDriven() {
    return PhaseTable.lines().stream()
        .map(
            line ->
                DynamicTest.dynamicTest(
                    line.from() + " " + line.trigger() + " " + line.to(), () -> drive(line)));
  }

  private static void drive(Transition line) {
    UnaryOperator<ScanRig> cause = CAUSES.get(line.trigger());
    assertNotNull(cause, "no cause is known for " + line.trigger());
    ScanRig rig = before(line);
    rig.expect(line.from());
    cause.apply(rig).expect(line.to());
    rig.expectNoted(NoticeKind.PHASE_CHANGED, line.from().ordinal());
    assertEquals(line.to(), PhaseTable.after(line.from(), line.trigger()));
  }

  private static ScanRig foilChecked() {
    ScanRig rig = ScanRig.selfTested().warm(ScanRig.WARM);
    rig.start(new Recipe(Programme.FOIL_CHECK, 40_000, 1_000, 1_000));
    return rig.until(Phase.COMPLETE, 10_000);
  }

  /** In the phase that is left, in the circumstances that the trigger needs. */
  private static ScanRig before(Transition line) {
    return switch (line.trigger()) {
      case WARM ->
          ScanRig.in(Phase.COMPLETE).press(Command.ACKNOWLEDGE).warm(25).start(ScanRig.SHORT);
      case DEGASSED_ONLY ->
          ScanRig.selfTested()
              .start(new Recipe(Programme.DEGAS_ONLY, 40_000, 1_000, 0))
              .warm(ScanRig.WARM)
              .advance(10);
      case CYCLE_FOUND -> ScanRig.in(Phase.CLEANING).cutPower(60).scan(10);
      case VERDICT_FOUND -> foilChecked().cutPower(60).scan(10);
      case RESUMED_DEGASSING -> ScanRig.in(Phase.DEGASSING).press(Command.PAUSE);
      case RESUMED_CLEANING -> ScanRig.in(Phase.CLEANING).press(Command.PAUSE);
      default -> ScanRig.in(line.from());
    };
  }

  @Test
  @DisplayName("every trigger but NONE has a line, every phase can be left, and reasons are given")
  void tableIsWhole() {
    Set<Trigger> used =
        PhaseTable.lines().stream().map(Transition::trigger).collect(Collectors.toSet());
    assertEquals(CAUSES.keySet(), used);
    assertEquals(Trigger.values().length - 1, used.size());
    Set<Phase> left = PhaseTable.lines().stream().map(Transition::from).collect(Collectors.toSet());
    assertEquals(Phase.values().length, left.size());
    PhaseTable.lines().forEach(line -> assertFalse(line.why().isBlank()));
  }

  @Test
  @DisplayName("deterministic and total: one next phase at most, and none for what is not named")
  void deterministicAndTotal() {
    Set<String> named = new HashSet<>();
    for (Transition line : PhaseTable.lines()) {
      assertFalse(!named.add(line.from() + " " + line.trigger()), line + " is declared twice");
    }
    for (Phase phase : Phase.values()) {
      for (Trigger trigger : Trigger.values()) {
        boolean stays = !named.contains(phase + " " + trigger);
        assertEquals(stays, PhaseTable.after(phase, trigger) == phase, phase + " " + trigger);
      }
    }
  }

  @Test
  @DisplayName("a table that names a phase and a trigger twice is refused, with both names")
  void secondLineIsRefused() {
    Transition first = PhaseTable.lines().get(0);
    Transition second = new Transition(first.from(), first.trigger(), Phase.LOCKOUT, "again");
    IllegalStateException refused =
        assertThrows(IllegalStateException.class, () -> PhaseTable.index(List.of(first, second)));
    assertEquals("SELF_TEST names SELF_TEST_PASSED twice", refused.getMessage());
  }

  @Test
  @Requirement("SR-03")
  @DisplayName("every phase but the lockout itself leads to the lockout by a fault")
  void everyPhaseLocksOut() {
    for (Phase phase : Phase.values()) {
      assertEquals(Phase.LOCKOUT, PhaseTable.after(phase, Trigger.FAULT_LATCHED));
    }
  }

  @Test
  @Requirement("SR-01")
  @DisplayName("a running phase is entered from rest by a start or a resume only")
  void runningIsEnteredOnPurpose() {
    for (Transition line : PhaseTable.lines()) {
      if (line.to().isRunning() && !line.from().isRunning()) {
        String trigger = line.trigger().name();
        assertEquals(true, trigger.equals("STARTED") || trigger.startsWith("RESUMED"), trigger);
      }
    }
  }
}
