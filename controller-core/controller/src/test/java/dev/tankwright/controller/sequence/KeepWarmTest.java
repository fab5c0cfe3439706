package dev.tankwright.controller.sequence;

import static dev.tankwright.trace.CountedAssertions.assertEquals;
import static dev.tankwright.trace.CountedAssertions.assertFalse;
import static dev.tankwright.trace.CountedAssertions.assertTrue;

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

/** The solution is kept warm between two cycles, where the profile asks for it. */
class KeepWarmTest {
  private final DeviceProfile profile =
      ScanRig.PROFILE.with(Parameter.KEEP_WARM, 1).with(Parameter.KEEP_WARM_MAXIMUM, 60_000);

  private ScanRig completed() {
    return ScanRig.in(Phase.COMPLETE, profile).warm(39).advance(20);
  }

  @Test
  @DisplayName("after completion the heater holds the setpoint, acknowledged or not, for its time")
  void holds() {
    ScanRig rig = completed().expectDriven(true, false, false);
    assertTrue(rig.outputs.panel.keepingWarm);
    rig.press(Command.ACKNOWLEDGE).expect(Phase.STANDBY).expectDriven(true, false, false);
    rig.warm(ScanRig.WARM).advance(20).expectNothingDriven().warm(39).advance(20);
    rig.expectDriven(true, false, false).advance(60_000).expectNothingDriven().expectNoFault();
    assertFalse(rig.outputs.panel.keepingWarm);
  }

  @Test
  @DisplayName("without the option nothing is heated after completion")
  void onlyWhenAskedFor() {
    ScanRig rig = ScanRig.in(Phase.COMPLETE).warm(39).advance(1_000).expectNothingDriven();
    assertFalse(rig.outputs.panel.keepingWarm);
  }

  @ParameterizedTest
  @EnumSource(
      value = Command.class,
      names = {"STOP", "DRAIN", "FRESH_SOLUTION"})
  @DisplayName("it ends when the operator stops it or begins anything else")
  void ends(Command command) {
    ScanRig rig = completed().press(Command.ACKNOWLEDGE).press(command).expectAccepted();
    rig.advance(10);
    assertFalse(rig.outputs.heaterRelay);
    assertFalse(rig.outputs.panel.keepingWarm);
    rig.press(Command.STOP).advance(10_000);
    assertFalse(rig.outputs.heaterRelay);
  }

  @Test
  @DisplayName("with nothing kept warm there is nothing to stop in standby")
  void nothingToStop() {
    ScanRig rig = ScanRig.selfTested(profile).press(Command.STOP);
    rig.expectRefused(Command.STOP, Refusal.NOT_IN_THIS_PHASE);
  }

  @Test
  @Requirement("SR-24")
  @DisplayName("loss of mains ends it for good: the return of mains heats nothing")
  void mainsLost() {
    ScanRig rig = completed().mains(false).scan(10).expectNothingDriven();
    rig.mains(true).advance(1_000).expectNothingDriven();
    assertFalse(rig.outputs.panel.keepingWarm);
  }

  @Test
  @Requirement("SR-09")
  @DisplayName("a tank that runs dry meanwhile cuts off, and a reset brings no heat back")
  void dryMeanwhile() {
    ScanRig rig = completed().level(false, false).advance(60).expectTrip(Fault.DRY_TANK);
    rig.level(true, true).expectResetAccepted(Fault.DRY_TANK).advance(2_000);
    rig.expect(Phase.STANDBY).expectNothingDriven();
  }

  @Test
  @DisplayName("the next cycle begins as always, and its completion begins it anew")
  void nextCycle() {
    ScanRig rig = completed().press(Command.ACKNOWLEDGE).start(ScanRig.SHORT);
    rig.expect(Phase.HEATING).warm(ScanRig.WARM).until(Phase.COMPLETE, 60_000);
    rig.warm(39).advance(20).expectDriven(true, false, false);
    assertEquals(0, rig.outputs.panel.setpointMilliC, "no cycle, no setpoint of a cycle");
  }

  @Test
  @DisplayName("after the next cycle it lasts its whole time again, whatever was left of the first")
  void wholeTimeAgain() {
    ScanRig rig = completed().advance(40_000).press(Command.ACKNOWLEDGE).start(ScanRig.SHORT);
    rig.warm(ScanRig.WARM).until(Phase.COMPLETE, 60_000).advance(59_900);
    assertTrue(rig.outputs.panel.keepingWarm);
    rig.advance(200);
    assertFalse(rig.outputs.panel.keepingWarm);
  }
}
