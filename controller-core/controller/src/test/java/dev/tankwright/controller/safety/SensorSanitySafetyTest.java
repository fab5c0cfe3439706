package dev.tankwright.controller.safety;

import static dev.tankwright.trace.CountedAssertions.assertEquals;

import dev.tankwright.controller.ScanRig;
import dev.tankwright.controller.board.Command;
import dev.tankwright.controller.board.DeviceProfile;
import dev.tankwright.controller.board.Fault;
import dev.tankwright.controller.board.NoticeKind;
import dev.tankwright.controller.board.Parameter;
import dev.tankwright.controller.board.Phase;
import dev.tankwright.controller.board.Refusal;
import dev.tankwright.trace.Requirement;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Sensors that jump or stand still. 5 K in 1 s is common practice, no source. */
class SensorSanitySafetyTest {
  private final DeviceProfile standard = DeviceProfile.sixLitre();

  @ParameterizedTest
  @EnumSource(
      value = Phase.class,
      names = {"STANDBY", "DRAINING", "SELF_TEST"})
  @Requirement("SR-17")
  @DisplayName("a control sensor that jumps by more than 5 K cuts off in the same scan")
  void controlJumps(Phase phase) {
    ScanRig rig = ScanRig.in(phase, standard);
    rig.controlSensor(30.2).scan(10).expectTrip(Fault.CONTROL_SENSOR_JUMP);
  }

  @ParameterizedTest(name = "by {0} K")
  @ValueSource(doubles = {-5.2, 5.2})
  @Requirement("SR-17")
  @DisplayName("so does the second sensor, up and down, in heating as well")
  void cutOffJumps(double kelvin) {
    ScanRig rig = ScanRig.in(Phase.HEATING, standard);
    rig.cutOffSensor(25 + kelvin).scan(10).expectTrip(Fault.CUT_OFF_SENSOR_JUMP);
  }

  @Test
  @Requirement("SR-17")
  @DisplayName("4.9 K in every second is no jump, also in the scan that ends a window")
  void quickButSteady() {
    ScanRig rig = ScanRig.in(Phase.STANDBY, standard);
    for (int i = 1; i <= 6; i++) {
      rig.warm(25 + 4.9 * i).advance(1_000).expectNoFault();
    }
  }

  @Test
  @Requirement("SR-17")
  @DisplayName("a jump is found in whichever scan of its window it comes")
  void inEveryScanOfTheWindow() {
    for (int scan = 0; scan < 100; scan++) {
      ScanRig rig = ScanRig.in(Phase.STANDBY, standard).advance(scan * 10);
      rig.controlSensor(31).scan(10).expectTrip(Fault.CONTROL_SENSOR_JUMP);
    }
  }

  @Test
  @Requirement("SR-17")
  @DisplayName("a reset waits until the window of the jump is over; an open circuit starts anew")
  void resetWaits() {
    DeviceProfile slow = standard.with(Parameter.JUMP_WINDOW, 10_000);
    ScanRig rig = ScanRig.in(Phase.STANDBY, slow).controlSensor(31).scan(10);
    rig.expectTrip(Fault.CONTROL_SENSOR_JUMP).expectResetRefused(Refusal.CAUSE_PRESENT);
    rig.warm(31).advance(10_000).expectResetAccepted(Fault.CONTROL_SENSOR_JUMP);
    int jumps = rig.of(NoticeKind.FAULT_RAISED, Fault.CONTROL_SENSOR_JUMP.ordinal()).size();
    assertEquals(1, jumps, "latched once");
  }

  @Test
  @Requirement("SR-17")
  @DisplayName("a reading that has come back to exactly the limit delays no reset")
  void resetAtTheLimit() {
    int from = ScanRig.selfTested().outputs.panel.temperatureMilliC;
    int to = ScanRig.selfTested().warm(30).scan(10).outputs.panel.temperatureMilliC;
    DeviceProfile exact =
        standard.with(Parameter.JUMP_WINDOW, 10_000).with(Parameter.JUMP_LIMIT, to - from);
    ScanRig rig = ScanRig.in(Phase.STANDBY, exact).warm(30).scan(10).expectNoFault();
    rig.controlSensor(31).scan(10).expectTrip(Fault.CONTROL_SENSOR_JUMP);
    rig.controlSensor(30).expectResetAccepted(Fault.CONTROL_SENSOR_JUMP);
  }

  @Test
  @Requirement("SR-17")
  @DisplayName("what is read when a broken circuit closes again is taken as it is")
  void closedAgain() {
    ScanRig rig = ScanRig.in(Phase.STANDBY, standard);
    rig.controlCounts(4_095).scan(10).controlSensor(25).scan(10).expectNoFault();
    rig.controlCounts(4_095).scan(10).controlSensor(50).cutOffCounts(4_095).scan(10);
    rig.cutOffSensor(50).scan(10).expectNoFault();
  }

  @Test
  @Requirement("SR-19")
  @DisplayName("what one sensor moves while nothing is heated makes the other one not frozen")
  void movedWhileOff() {
    ScanRig rig = ScanRig.in(Phase.HEATING).advance(20).press(Command.PAUSE);
    rig.cutOffSensor(26.8).advance(1_000).press(Command.RESUME).expect(Phase.HEATING);
    rig.advance(20_000).expectNoFault();
  }

  @Test
  @Requirement("SR-19")
  @DisplayName("exactly the move that is asked for is one")
  void frozenAtTheLimit() {
    int from = ScanRig.selfTested().outputs.panel.temperatureMilliC;
    int to = ScanRig.selfTested().warm(26.5).scan(10).outputs.panel.temperatureMilliC;
    DeviceProfile exact = ScanRig.PROFILE.with(Parameter.FROZEN_MOVE, to - from);
    ScanRig rig = ScanRig.in(Phase.HEATING, exact).advance(20).cutOffSensor(26.5);
    rig.advance(5_000).expectNoFault().scan(10).expectTrip(Fault.CONTROL_SENSOR_FROZEN);
  }

  @Test
  @Requirement("SR-19")
  @DisplayName("a control sensor that stands still while the other warms by 1.5 K cuts off in 5 s")
  void controlFrozen() {
    ScanRig rig = ScanRig.in(Phase.HEATING).advance(20);
    rig.cutOffSensor(26.4).advance(20_000).expectNoFault();
    rig.cutOffSensor(26.6).advance(5_000).expectNoFault();
    rig.scan(10).expectTrip(Fault.CONTROL_SENSOR_FROZEN);
    rig.expectResetAccepted(Fault.CONTROL_SENSOR_FROZEN);
  }

  @Test
  @Requirement("SR-19")
  @DisplayName("so does a second sensor that stands still")
  void cutOffFrozen() {
    ScanRig rig =
        ScanRig.in(Phase.HEATING).advance(20).controlSensor(26.6).advance(5_000).expectNoFault();
    rig.scan(10).expectTrip(Fault.CUT_OFF_SENSOR_FROZEN);
  }

  @Test
  @Requirement("SR-19")
  @DisplayName("a sensor that moves at all, however late, is not frozen; nor one without heating")
  void movingIsNotFrozen() {
    ScanRig rig = ScanRig.in(Phase.HEATING);
    for (int i = 0; i < 20; i++) {
      rig.cutOffSensor(26.6).controlSensor(25.1).advance(4_000);
      rig.cutOffSensor(25).controlSensor(25).advance(1_000).expectNoFault();
    }
    ScanRig.in(Phase.STANDBY).cutOffSensor(27.5).advance(60_000).expectNoFault();
  }
}
