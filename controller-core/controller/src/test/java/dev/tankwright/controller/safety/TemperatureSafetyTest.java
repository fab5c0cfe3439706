package dev.tankwright.controller.safety;

import static dev.tankwright.trace.CountedAssertions.assertEquals;
import static dev.tankwright.trace.CountedAssertions.assertFalse;
import static dev.tankwright.trace.CountedAssertions.assertTrue;

import dev.tankwright.controller.ScanRig;
import dev.tankwright.controller.board.Command;
import dev.tankwright.controller.board.CycleCause;
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
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class TemperatureSafetyTest {
  @ParameterizedTest
  @EnumSource(
      value = Phase.class,
      names = {"LOCKOUT"},
      mode = EnumSource.Mode.EXCLUDE)
  @Requirement("SR-03")
  @DisplayName("the cut-off acts in every phase within 200 ms of 70 °C at the second sensor")
  void cutOffActs(Phase phase) {
    ScanRig rig = ScanRig.in(phase).cutOffSensor(70.1);
    rig.advance(100).expect(phase).expectNoFault();
    rig.scan(10).expectTrip(Fault.OVER_TEMPERATURE);
  }

  @Test
  @Requirement("SR-03")
  @DisplayName("just under the limit nothing happens; a reset waits for 5 K of cooling")
  void cutOffReleases() {
    ScanRig rig = ScanRig.selfTested().warm(69.9).advance(60_000).expectNoFault();
    rig.warm(70.1).advance(110).expectTrip(Fault.OVER_TEMPERATURE);
    rig.warm(65.1).advance(1_000).expectResetRefused(Refusal.CAUSE_PRESENT);
    rig.warm(64.9).advance(10).expectResetAccepted(Fault.OVER_TEMPERATURE);
  }

  @Test
  @Requirement("SR-03")
  @DisplayName("a peak shorter than 100 ms is no cut-off")
  void peakIsNoCutOff() {
    ScanRig rig = ScanRig.selfTested();
    for (int i = 0; i < 50; i++) {
      rig.cutOffSensor(75).advance(100).cutOffSensor(25).advance(10);
    }
    rig.expectNoFault();
  }

  @Test
  @Requirement("SR-03")
  @DisplayName("the longest cut-off time that a profile may name still acts within 200 ms")
  void slowestProfileHoldsTheBound() {
    DeviceProfile slow =
        DeviceProfile.sixLitre()
            .with(Parameter.CUT_OFF_TIME, Parameter.CUT_OFF_TIME.maximum())
            .with(Parameter.CUT_OFF_LIMIT, Parameter.CUT_OFF_LIMIT.maximum());
    ScanRig.in(Phase.HEATING, slow)
        .cutOffSensor(80)
        .advance(190)
        .expectTrip(Fault.OVER_TEMPERATURE);
  }

  @Test
  @Requirement("SR-03")
  @DisplayName("a sensor that breaks during the lockout does not count as cooled down")
  void brokenSensorIsNotCool() {
    ScanRig rig = ScanRig.selfTested().warm(75).advance(200);
    rig.cutOffCounts(0).scan(10).expectResetRefused(Refusal.CAUSE_PRESENT);
  }

  @Test
  @Requirement("SR-04")
  @DisplayName("more than 8 K over the setpoint for 5 s is an overshoot, 7.9 K is none")
  void overshoot() {
    ScanRig rig = ScanRig.in(Phase.CLEANING);
    rig.warm(47.9).advance(10_000).expectNoFault().expect(Phase.CLEANING);
    rig.warm(48.1).advance(5_000).expectNoFault().expect(Phase.CLEANING);
    rig.scan(10)
        .expectTrip(Fault.OVERSHOOT)
        .expectNoted(NoticeKind.CYCLE_INTERRUPTED, CycleCause.FAULT.ordinal());
    // The setpoint ended with the cycle, the heat did not.
    rig.expectResetRefused(Refusal.CAUSE_PRESENT);
    rig.warm(47.9).expectResetAccepted(Fault.OVERSHOOT);
  }

  private static int reading(double celsius) {
    return ScanRig.selfTested().warm(celsius).scan(10).outputs.panel.temperatureMilliC;
  }

  @Test
  @Requirement("SR-03")
  @DisplayName("exactly the cut-off limit cuts off, and exactly the release lets a reset through")
  void cutOffAtTheLimit() {
    DeviceProfile exact =
        ScanRig.PROFILE
            .with(Parameter.CUT_OFF_LIMIT, reading(70))
            .with(Parameter.CUT_OFF_RELEASE, reading(70) - reading(65));
    ScanRig rig = ScanRig.selfTested(exact).warm(70).until(Phase.LOCKOUT, 200);
    rig.expectTrip(Fault.OVER_TEMPERATURE).warm(65).expectResetAccepted(Fault.OVER_TEMPERATURE);
  }

  @Test
  @Requirement("SR-06")
  @DisplayName("sensors that differ by exactly the limit agree")
  void agreeAtTheLimit() {
    DeviceProfile exact = ScanRig.PROFILE.with(Parameter.DISAGREE_LIMIT, reading(28) - reading(25));
    ScanRig.selfTested(exact).cutOffSensor(28).advance(10_000).expectNoFault();
  }

  @Test
  @Requirement("SR-04")
  @DisplayName("a solution exactly at the limit has not overshot, two converter's counts above has")
  void overshootAtTheLimit() {
    int limit = reading(48) - 40_000;
    DeviceProfile exact = ScanRig.PROFILE.with(Parameter.OVERSHOOT_LIMIT, limit);
    ScanRig rig = ScanRig.in(Phase.CLEANING, exact).warm(48).advance(10_000).expectNoFault();
    rig.controlCounts(rig.inputs.controlSensorCounts + 2).advance(5_010);
    rig.expectTrip(Fault.OVERSHOOT);
  }

  @Test
  @Requirement("SR-04")
  @DisplayName("a bath still hot from the cycle before is no overshoot, until it has cooled")
  void hotStartIsNoOvershoot() {
    Recipe mild = new Recipe(Programme.CUSTOM, 30_000, 60_000, 600_000);
    ScanRig rig = ScanRig.selfTested().warm(60).start(mild).advance(30_000).expectNoFault();
    rig.warm(37).advance(1_000).warm(38.1).advance(5_000).expectNoFault();
    rig.scan(10).expectTrip(Fault.OVERSHOOT);
  }

  @ParameterizedTest(name = "{0}: {1} counts at the control sensor, {2} at the cut-off sensor")
  @CsvSource({
    "CONTROL_SENSOR_OPEN, 4095, 0", "CONTROL_SENSOR_OPEN, 4080, 0",
    "CONTROL_SENSOR_SHORT, -1, 0", "CONTROL_SENSOR_SHORT, 15, 0",
    "CUT_OFF_SENSOR_OPEN, 0, 4095", "CUT_OFF_SENSOR_SHORT, 0, 15"
  })
  @Requirement("SR-05")
  @DisplayName("a broken circuit takes the heat away at once and cuts off after 100 ms")
  void brokenSensor(Fault fault, int control, int cutOff) {
    ScanRig rig = ScanRig.in(Phase.HEATING).expectDriven(true, false, false);
    if (control != 0) {
      rig.controlCounts(control);
    } else {
      rig.cutOffCounts(cutOff);
    }
    rig.scan(10).expectNothingDriven().expect(Phase.HEATING);
    rig.advance(90).expectNoFault().expectNothingDriven();
    rig.scan(10).expectTrip(fault);
    assertEquals(1, Integer.bitCount(raisedBits(rig)), "the broken sensor is the only fault");
    rig.advance(10_000).expectResetRefused(Refusal.CAUSE_PRESENT);
    rig.warm(25).advance(10).expectResetAccepted(fault);
  }

  @Test
  @Requirement("SR-05")
  @DisplayName("one good reading in between begins the time anew")
  void flickeringSensor() {
    ScanRig rig = ScanRig.selfTested();
    for (int i = 0; i < 20; i++) {
      rig.controlCounts(4_095).advance(100).controlSensor(25).advance(10);
    }
    rig.expectNoFault();
    assertTrue(rig.outputs.panel.temperatureValid);
    rig.controlCounts(4_095).scan(10);
    assertFalse(rig.outputs.panel.temperatureValid);
  }

  @ParameterizedTest(name = "{0} K apart")
  @CsvSource({"3.2", "-3.2"})
  @Requirement("SR-06")
  @DisplayName("sensors more than 3 K apart for 5 s cut off, to either side")
  void sensorsDisagree(double apart) {
    ScanRig rig = ScanRig.in(Phase.CLEANING).warm(40);
    rig.cutOffSensor(40 + apart * 2.8 / 3.2).advance(10_000).expectNoFault();
    rig.cutOffSensor(40 + apart).advance(5_000).expectNoFault();
    rig.scan(10).expectTrip(Fault.SENSORS_DISAGREE);
    rig.expectResetRefused(Refusal.CAUSE_PRESENT);
    rig.warm(40).scan(10).expectResetAccepted(Fault.SENSORS_DISAGREE);
  }

  @Test
  @Requirement({"SR-05", "SR-03"})
  @DisplayName("of several faults the most severe is shown, and all clear together")
  void worstIsShown() {
    ScanRig rig = ScanRig.selfTested().generatorFault(true).advance(310);
    rig.expectTrip(Fault.GENERATOR_FAULT);
    rig.controlCounts(0).advance(110);
    assertEquals(Fault.CONTROL_SENSOR_SHORT, rig.outputs.panel.fault);
    assertFalse(rig.outputs.cutOffRelay, "the second fault is a cut-off");
    rig.generatorFault(false).advance(10).expectResetRefused(Refusal.CAUSE_PRESENT);
    rig.warm(25).advance(10).press(Command.RESET).expect(Phase.SELF_TEST).expectNoFault();
    rig.expectAnnouncedOnce(Fault.CONTROL_SENSOR_SHORT).expectAnnouncedOnce(Fault.GENERATOR_FAULT);
  }

  private static int raisedBits(ScanRig rig) {
    return rig.notes.stream()
        .filter(n -> n.kind() == NoticeKind.FAULT_RAISED)
        .mapToInt(n -> Fault.of(n.first()).bit())
        .reduce(0, (a, b) -> a | b);
  }
}
