package dev.tankwright.controller.safety;

import static dev.tankwright.controller.IdealBoard.Feedback.STUCK_OFF;
import static dev.tankwright.controller.IdealBoard.Feedback.STUCK_ON;
import static dev.tankwright.trace.CountedAssertions.assertEquals;

import dev.tankwright.controller.ScanRig;
import dev.tankwright.controller.board.Command;
import dev.tankwright.controller.board.DeviceProfile;
import dev.tankwright.controller.board.Fault;
import dev.tankwright.controller.board.Parameter;
import dev.tankwright.controller.board.Phase;
import dev.tankwright.controller.board.Refusal;
import dev.tankwright.trace.Requirement;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

/** What a monitor has seen half of when the state is captured, it sees the rest of afterwards. */
class HalfwayTest {
  private static final DeviceProfile STANDARD = DeviceProfile.sixLitre();

  /** A condition, the phase in which it begins, and the whole time for which it may last, ms. */
  static Stream<Arguments> lasting() {
    return Stream.of(
        lasts(Fault.LID_CONTRADICTION, Phase.STANDBY, 500, r -> r.lidContacts(true, true)),
        lasts(Fault.OVER_TEMPERATURE, Phase.STANDBY, 100, r -> r.cutOffSensor(70.1)),
        lasts(Fault.OVERSHOOT, Phase.CLEANING, 5_000, r -> r.warm(48.1)),
        lasts(Fault.CONTROL_SENSOR_OPEN, Phase.STANDBY, 100, r -> r.controlCounts(4_095)),
        lasts(Fault.CONTROL_SENSOR_SHORT, Phase.STANDBY, 100, r -> r.controlCounts(0)),
        lasts(Fault.CUT_OFF_SENSOR_OPEN, Phase.STANDBY, 100, r -> r.cutOffCounts(4_095)),
        lasts(Fault.CUT_OFF_SENSOR_SHORT, Phase.STANDBY, 100, r -> r.cutOffCounts(0)),
        lasts(Fault.SENSORS_DISAGREE, Phase.STANDBY, 5_000, r -> r.cutOffSensor(28.2)),
        lasts(Fault.CONTROL_SENSOR_FROZEN, Phase.HEATING, 5_000, r -> r.cutOffSensor(26.6)),
        lasts(Fault.CUT_OFF_SENSOR_FROZEN, Phase.HEATING, 5_000, r -> r.controlSensor(26.6)),
        lasts(Fault.HEATER_RELAY_WELDED, Phase.STANDBY, 500, r -> r.heaterCurrent(STUCK_ON)),
        lasts(Fault.HEATER_WITHOUT_CURRENT, Phase.HEATING, 1_000, r -> r.heaterCurrent(STUCK_OFF)),
        lasts(Fault.DRY_TANK, Phase.CLEANING, 50, r -> r.level(false, false)),
        lasts(Fault.LEVEL_CONTRADICTION, Phase.STANDBY, 2_000, r -> r.level(false, true)),
        lasts(Fault.GENERATOR_FAULT, Phase.CLEANING, 300, r -> r.generatorRunning(STUCK_OFF)),
        lasts(Fault.VALVE_NOT_IN_PLACE, Phase.STANDBY, 5_000, r -> r.valveJammed(false, false)));
  }

  private static Arguments lasts(Fault fault, Phase phase, int ms, UnaryOperator<ScanRig> begin) {
    return Arguments.of(fault, phase, ms, begin);
  }

  @ParameterizedTest(name = "{0} in {1}, {2} ms")
  @MethodSource("lasting")
  @Requirement({
    "SR-02", "SR-03", "SR-04", "SR-05", "SR-06", "SR-07", "SR-08", "SR-09", "SR-10", "SR-11",
    "SR-13", "SR-19"
  })
  @DisplayName("a condition that has lasted a part of its time needs only the rest of it")
  void lastsOn(Fault fault, Phase phase, int ms, UnaryOperator<ScanRig> begin) {
    ScanRig rig = begin.apply(ScanRig.in(phase).advance(20)).advance(ms / 10 * 4).handOver();
    rig.advance(ms - ms / 10 * 4).expect(phaseUnder(fault, phase)).expectNoFault();
    rig.scan(10).expectTrip(fault);
  }

  private static Phase phaseUnder(Fault fault, Phase phase) {
    return fault == Fault.LID_CONTRADICTION && phase.isRunning() ? Phase.PAUSED : phase;
  }

  @Test
  @Requirement("SR-12")
  @DisplayName("for how long the drain has been open over a wet minimum")
  void drainBlocked() {
    DeviceProfile hasty = ScanRig.PROFILE.with(Parameter.DRAIN_MAXIMUM, 30_000);
    ScanRig rig = ScanRig.in(Phase.DRAINING, hasty).advance(12_000).handOver().advance(18_000);
    rig.expectNoFault().scan(10).expectTrip(Fault.DRAIN_BLOCKED);
  }

  @Test
  @Requirement("SR-15")
  @DisplayName("for how long the heater has been on, and from which temperature")
  void heatingEffect() {
    ScanRig rig = ScanRig.in(Phase.HEATING).advance(200_000).handOver();
    rig.advance(39_900).expectNoFault().advance(100).expectTrip(Fault.HEATING_WITHOUT_EFFECT);
    ScanRig slow = ScanRig.in(Phase.HEATING).advance(200_000).warm(25.6).handOver();
    slow.advance(239_900).expectNoFault();
  }

  @Test
  @Requirement("SR-16")
  @DisplayName("for how long the solution has been heated up")
  void heatUpTime() {
    ScanRig rig = ScanRig.in(Phase.HEATING, hastyHeatUp()).advance(30_000).handOver();
    rig.advance(29_990).expectNoFault().scan(10).expectTrip(Fault.HEAT_UP_TOO_LONG);
  }

  @Test
  @Requirement("SR-16")
  @DisplayName("that the time of a cycle that has just ended is still to be forgotten")
  void endedHeatUp() {
    ScanRig rig = ScanRig.in(Phase.HEATING, hastyHeatUp()).advance(40_000).press(Command.STOP);
    rig.handOver().advance(10).start(ScanRig.SHORT).advance(40_000).expectNoFault();
  }

  private static DeviceProfile hastyHeatUp() {
    return ScanRig.PROFILE.with(Parameter.HEAT_UP_MAXIMUM, 60_000);
  }

  @Test
  @Requirement("SR-09")
  @DisplayName("that the tank is dry, when nothing is driven yet")
  void dryBeforeDriving() {
    ScanRig rig = ScanRig.in(Phase.DEGASSING).advance(7_000).level(false, false).advance(2_980);
    rig.handOver().scan(10).expectNoFault().expectNothingDriven().scan(10);
    rig.expectTrip(Fault.DRY_TANK);
  }

  @Test
  @Requirement("SR-04")
  @DisplayName("where the limit of an overshoot lay, whose setpoint is gone")
  void overshootLimit() {
    ScanRig rig = ScanRig.in(Phase.CLEANING).warm(48.1).advance(5_010).handOver().scan(10);
    rig.expectResetRefused(Refusal.CAUSE_PRESENT).warm(47.9).scan(10);
    rig.press(Command.RESET).expect(Phase.SELF_TEST);
  }

  @Test
  @Requirement("SR-04")
  @DisplayName("that a hot bath was never below its setpoint, and so has not overshot it")
  void neverBelow() {
    ScanRig rig = ScanRig.selfTested().warm(60).start(ScanRig.SHORT).advance(100).handOver();
    rig.advance(15_000).expectNoFault();
  }

  @Test
  @Requirement("SR-17")
  @DisplayName("from where a jump would start")
  void jump() {
    ScanRig rig = ScanRig.in(Phase.STANDBY, STANDARD).advance(20).controlSensor(28).scan(10);
    rig.handOver().controlSensor(30.2).scan(10).expectTrip(Fault.CONTROL_SENSOR_JUMP);
    rig = ScanRig.in(Phase.STANDBY, STANDARD).advance(20).cutOffSensor(28).scan(10);
    rig.handOver().cutOffSensor(30.2).scan(10).expectTrip(Fault.CUT_OFF_SENSOR_JUMP);
  }

  @Test
  @Requirement("SR-17")
  @DisplayName("when the window of a jump ends")
  void jumpWindow() {
    // A window ends in the first of these scans, and the next one 1 s later.
    ScanRig rig = ScanRig.in(Phase.STANDBY, STANDARD).scan(10).advance(500).handOver();
    rig.warm(28).advance(490).expectNoFault().scan(10).warm(30.5).scan(10).expectNoFault();
    rig.warm(33.2).scan(10).expect(Phase.LOCKOUT);
  }

  @ParameterizedTest
  @EnumSource(
      value = Fault.class,
      names = {"CONTROL_SENSOR_FROZEN", "CUT_OFF_SENSOR_FROZEN"})
  @Requirement("SR-19")
  @DisplayName("where the sensor that moves stood when the other one began to stand still")
  void frozen(Fault fault) {
    ScanRig rig = ScanRig.in(Phase.HEATING).advance(20);
    boolean control = fault == Fault.CONTROL_SENSOR_FROZEN;
    UnaryOperator<ScanRig> mild = r -> control ? r.cutOffSensor(26.4) : r.controlSensor(26.4);
    mild.apply(rig).advance(100).handOver().advance(20_000).expectNoFault();
  }

  @Test
  @Requirement("SR-22")
  @DisplayName("which command was given last, how long ago, and that it is being repeated")
  void stuckKey() {
    ScanRig once = ScanRig.selfTested().press(Command.RESUME).handOver().advance(90);
    repeat(once, 5_000).expectNoFault();
    once.press(Command.RESUME).expect(Phase.LOCKOUT);
    once.expectTrip(Fault.COMMAND_STUCK);

    ScanRig repeated = ScanRig.selfTested().press(Command.RESUME).advance(90);
    repeat(repeated, 2_000).handOver();
    repeat(repeated, 3_000).expectNoFault().press(Command.RESUME);
    repeated.expectTrip(Fault.COMMAND_STUCK);
  }

  @Test
  @Requirement("SR-22")
  @DisplayName("for how long no command was given, so that a slow hand is no stuck key")
  void slowHand() {
    ScanRig rig = ScanRig.selfTested().press(Command.RESUME).advance(300).handOver();
    rig.advance(100).press(Command.RESUME).advance(90);
    repeat(rig, 5_000).expectNoFault().press(Command.RESUME).expectTrip(Fault.COMMAND_STUCK);
  }

  @Test
  @DisplayName("which reading is shown, though the pins have flickered by a count since")
  void flickerIsShown() {
    ScanRig rig = ScanRig.selfTested();
    int counts = rig.inputs.controlSensorCounts;
    int milliC = rig.outputs.panel.temperatureMilliC;
    rig.controlCounts(counts + 1).advance(20).handOver().advance(20);
    assertEquals(milliC, rig.outputs.panel.temperatureMilliC);
    rig.controlCounts(counts - 1).advance(20);
    assertEquals(milliC, rig.outputs.panel.temperatureMilliC);
  }

  @Test
  @Requirement("SR-03")
  @DisplayName("that a reading a count below the cut-off limit only flickers")
  void flickerBelowTheLimit() {
    ScanRig rig = ScanRig.selfTested().warm(69.7);
    while (rig.advance(200).phase() != Phase.LOCKOUT) {
      rig.cutOffCounts(rig.inputs.cutOffSensorCounts + 2);
    }
    int hottest = rig.inputs.cutOffSensorCounts;
    int below = hottest - 1;
    ScanRig probe = ScanRig.selfTested().warm(69.7).cutOffCounts(below).advance(200);
    int last = probe.phase() == Phase.LOCKOUT ? hottest - 2 : below;
    ScanRig flickers = ScanRig.selfTested().warm(69.7).cutOffCounts(last).advance(200);
    flickers.expectNoFault().cutOffCounts(last + 1).advance(20).handOver().advance(200);
    flickers.expectNoFault().cutOffCounts(last).scan(10).cutOffCounts(last + 2).advance(200);
    flickers.expect(Phase.LOCKOUT);
  }

  /** Gives the command every 100 ms for so long. */
  private static ScanRig repeat(ScanRig rig, int ms) {
    for (int passed = 0; passed < ms; passed += 100) {
      rig.press(Command.RESUME).advance(90);
    }
    return rig;
  }
}
