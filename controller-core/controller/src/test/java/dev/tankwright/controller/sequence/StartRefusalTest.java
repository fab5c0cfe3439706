package dev.tankwright.controller.sequence;

import static dev.tankwright.trace.CountedAssertions.assertEquals;

import dev.tankwright.controller.ScanRig;
import dev.tankwright.controller.board.Command;
import dev.tankwright.controller.board.DeviceProfile;
import dev.tankwright.controller.board.NoticeKind;
import dev.tankwright.controller.board.Parameter;
import dev.tankwright.controller.board.Phase;
import dev.tankwright.controller.board.Programme;
import dev.tankwright.controller.board.Recipe;
import dev.tankwright.controller.board.Refusal;
import dev.tankwright.trace.Requirement;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

class StartRefusalTest {
  static Stream<Arguments> hindrances() {
    return Stream.of(
        hindrance("lid open", Refusal.LID_OPEN, rig -> rig.lid(false)),
        hindrance("lid only just closed", Refusal.LID_OPEN, StartRefusalTest::justClosed),
        hindrance("level low", Refusal.LEVEL_TOO_LOW, rig -> rig.level(false, false)),
        hindrance("drain open", Refusal.DRAIN_NOT_CLOSED, rig -> rig.valveJammed(true, false)),
        hindrance(
            "drain at neither end", Refusal.DRAIN_NOT_CLOSED, rig -> rig.valveJammed(false, false)),
        hindrance("mains absent", Refusal.MAINS_ABSENT, rig -> rig.mains(false)));
  }

  private static Arguments hindrance(String name, Refusal refusal, Consumer<ScanRig> world) {
    return Arguments.of(name, refusal, world);
  }

  private static void justClosed(ScanRig rig) {
    rig.lid(false).advance(100).lid(true).advance(40);
  }

  @ParameterizedTest(name = "{0}: {1}")
  @MethodSource("hindrances")
  @Requirement({"SR-01", "SR-09"})
  @DisplayName("a start that something hinders is refused and nothing is driven")
  void hinderedStart(String name, Refusal refusal, Consumer<ScanRig> world) {
    ScanRig rig = ScanRig.selfTested();
    world.accept(rig);
    rig.start(ScanRig.SHORT).expectRefused(Command.START, refusal);
    rig.expect(Phase.STANDBY).expectNothingDriven();
    assertEquals(0, rig.controller.cycleTally().number(), "no cycle has begun");
  }

  static Stream<Arguments> recipes() {
    return Stream.of(
        Arguments.of(null, false),
        Arguments.of(recipe(20_999, 1_000, 1_000), false),
        Arguments.of(recipe(21_000, 1_000, 1_000), true),
        Arguments.of(recipe(60_000, 3_600_000, 3_600_000), true),
        Arguments.of(recipe(60_001, 1_000, 1_000), false),
        Arguments.of(recipe(40_000, 3_600_001, 1_000), false),
        Arguments.of(recipe(40_000, 1_000, 3_600_001), false),
        Arguments.of(recipe(Integer.MIN_VALUE, 1_000, 1_000), false),
        Arguments.of(recipe(Integer.MAX_VALUE, 1_000, 1_000), false));
  }

  private static Recipe recipe(int setpoint, int degas, int clean) {
    return new Recipe(Programme.CUSTOM, setpoint, degas, clean);
  }

  @ParameterizedTest(name = "{0}: accepted {1}")
  @MethodSource("recipes")
  @Requirement("SR-04")
  @DisplayName("only a recipe within the profile's limits is accepted")
  void recipeLimits(Recipe recipe, boolean accepted) {
    ScanRig rig = ScanRig.selfTested().start(recipe);
    if (accepted) {
      rig.expectAccepted().expect(Phase.HEATING);
    } else {
      rig.expectRefused(Command.START, Refusal.RECIPE_OUT_OF_RANGE).expect(Phase.STANDBY);
    }
  }

  @Test
  @DisplayName("draining without mains is refused")
  void drainWithoutMains() {
    ScanRig rig = ScanRig.selfTested().mains(false).press(Command.DRAIN);
    rig.expectRefused(Command.DRAIN, Refusal.MAINS_ABSENT).expect(Phase.STANDBY);
  }

  @Test
  @DisplayName("self test waits, without a fault, for contacts and mains to be in order")
  void selfTestWaits() {
    DeviceProfile slow = ScanRig.PROFILE.with(Parameter.VALVE_TIME, 30_000);
    ScanRig rig = ScanRig.poweredUp(slow).mains(false).advance(60_000).expect(Phase.SELF_TEST);
    rig.mains(true).valveJammed(false, false).advance(20_000).expect(Phase.SELF_TEST);
    rig.valveFree().advance(500).expectNoFault().expect(Phase.SELF_TEST);
    rig.scan(10).expect(Phase.STANDBY);
    assertEquals(0, rig.of(NoticeKind.FAULT_RAISED, 0).size());
  }
}
