package dev.tankwright.controller.safety;

import static dev.tankwright.trace.CountedAssertions.assertEquals;

import dev.tankwright.controller.ScanRig;
import dev.tankwright.controller.board.Command;
import dev.tankwright.controller.board.DeviceProfile;
import dev.tankwright.controller.board.Fault;
import dev.tankwright.controller.board.Parameter;
import dev.tankwright.controller.board.Phase;
import dev.tankwright.controller.board.Refusal;
import dev.tankwright.trace.Requirement;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class LevelSafetyTest {
  @ParameterizedTest
  @EnumSource(
      value = Phase.class,
      names = {"HEATING", "DEGASSING", "CLEANING"})
  @Requirement("SR-09")
  @DisplayName("heating or sounding over a dry tank cuts off within 100 ms")
  void dryWhileInUse(Phase phase) {
    ScanRig rig = ScanRig.in(phase).level(false, false);
    rig.advance(50).expectNoFault().expect(phase);
    rig.scan(10).expectTrip(Fault.DRY_TANK);
    rig.advance(60_000).expectResetRefused(Refusal.CAUSE_PRESENT);
    rig.level(true, true).scan(10).expectResetAccepted(Fault.DRY_TANK);
  }

  @Test
  @Requirement("SR-09")
  @DisplayName("the longest dry time that a profile may name still acts within 100 ms")
  void slowestProfileHoldsTheBound() {
    DeviceProfile slow = ScanRig.PROFILE.with(Parameter.DRY_TIME, Parameter.DRY_TIME.maximum());
    ScanRig.in(Phase.HEATING, slow).level(false, false).advance(100).expectTrip(Fault.DRY_TANK);
  }

  @Test
  @Requirement("SR-09")
  @DisplayName("a splash that uncovers the contact for less than 50 ms is no dry tank")
  void splashIsNotDry() {
    ScanRig rig = ScanRig.in(Phase.CLEANING);
    for (int i = 0; i < 20; i++) {
      rig.level(false, false).advance(50).level(true, true).advance(10);
    }
    rig.expectNoFault().expect(Phase.CLEANING);
  }

  @Test
  @Requirement("SR-09")
  @DisplayName("a tank that runs dry between two degassing pulses is found at the next pulse")
  void dryBetweenPulses() {
    // Pulses of 6 s with 4 s between them; the heater rests.
    ScanRig rig = ScanRig.in(Phase.DEGASSING).advance(7_000).expectNothingDriven();
    rig.level(false, false).advance(2_900).expectNoFault().expectNothingDriven();
    rig.advance(90).expectNoFault().scan(10).expect(Phase.LOCKOUT);
    assertEquals(Fault.DRY_TANK, rig.outputs.panel.fault);
    // No scan of the whole time drove anything over the dry tank.
    assertEquals(6_000, rig.controller.cycleTally().ultrasoundMs());
  }

  @Test
  @Requirement("SR-09")
  @DisplayName("a tank that ran dry at rest is found when the heater is wanted, and not heated")
  void dryBeforeHeating() {
    ScanRig rig = ScanRig.in(Phase.DEGASSING).advance(7_000).level(false, false).advance(1_000);
    rig.expectNoFault().warm(39).scan(10).expectTrip(Fault.DRY_TANK);
  }

  @Test
  @Requirement("SR-09")
  @DisplayName("an empty tank at rest is no fault")
  void emptyAtRest() {
    ScanRig.selfTested().level(false, false).advance(60_000).expectNoFault();
    ScanRig.in(Phase.PAUSED).level(false, false).advance(60_000).expectNoFault();
  }

  @Test
  @Requirement("SR-09")
  @DisplayName("a start over a low level is refused with an advisory; a resume is refused")
  void startOverLowLevel() {
    ScanRig rig = ScanRig.selfTested().level(false, false).start(ScanRig.SHORT);
    rig.expectRefused(Command.START, Refusal.LEVEL_TOO_LOW).expect(Phase.STANDBY);
    assertEquals(Fault.LEVEL_LOW_AT_START, rig.outputs.panel.fault);
    rig.level(true, false).start(ScanRig.SHORT).expect(Phase.HEATING).expectNoFault();
    rig.expectAnnouncedOnce(Fault.LEVEL_LOW_AT_START);

    rig.press(Command.PAUSE).level(false, false).press(Command.RESUME);
    rig.expectRefused(Command.RESUME, Refusal.LEVEL_TOO_LOW).expect(Phase.PAUSED);
    rig.expectNothingDriven();
  }

  @ParameterizedTest
  @EnumSource(
      value = Phase.class,
      names = {"STANDBY", "PAUSED", "COMPLETE", "DRAINING"})
  @Requirement("SR-10")
  @DisplayName("a wet fill mark over a dry minimum for 2 s cuts off")
  void levelContradiction(Phase phase) {
    ScanRig rig = ScanRig.in(phase).level(false, true);
    rig.advance(2_000).expectNoFault().expect(phase);
    rig.scan(10).expectTrip(Fault.LEVEL_CONTRADICTION);
    rig.expectResetRefused(Refusal.CAUSE_PRESENT);
    rig.level(true, true).scan(10).expectResetAccepted(Fault.LEVEL_CONTRADICTION);
  }
}
