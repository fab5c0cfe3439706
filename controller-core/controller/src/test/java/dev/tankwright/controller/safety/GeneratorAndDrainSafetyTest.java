package dev.tankwright.controller.safety;

import static dev.tankwright.controller.IdealBoard.Feedback.FOLLOWS;
import static dev.tankwright.controller.IdealBoard.Feedback.STUCK_OFF;
import static dev.tankwright.controller.IdealBoard.Feedback.STUCK_ON;

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
import org.junit.jupiter.params.provider.CsvSource;

class GeneratorAndDrainSafetyTest {
  @Test
  @Requirement("SR-11")
  @DisplayName("a generator that reports a fault for 300 ms locks out")
  void generatorReportsFault() {
    ScanRig rig = ScanRig.in(Phase.CLEANING).generatorFault(true);
    rig.advance(300).expectNoFault().expectDriven(false, true, false);
    rig.scan(10).expectTrip(Fault.GENERATOR_FAULT);
    rig.expectResetRefused(Refusal.CAUSE_PRESENT);
    rig.generatorFault(false).scan(10).expectResetAccepted(Fault.GENERATOR_FAULT);
  }

  @Test
  @Requirement("SR-11")
  @DisplayName("a generator that does not start, or does not stop, for 300 ms locks out")
  void generatorDoesNotFollow() {
    ScanRig silent = ScanRig.in(Phase.CLEANING).generatorRunning(STUCK_OFF);
    silent.advance(300).expectNoFault().scan(10).expectTrip(Fault.GENERATOR_FAULT);

    ScanRig sounding = ScanRig.selfTested().generatorRunning(STUCK_ON);
    sounding.advance(300).expectNoFault().scan(10).expectTrip(Fault.GENERATOR_FAULT);
    sounding.advance(100).expectResetRefused(Refusal.CAUSE_PRESENT);
    sounding.generatorRunning(FOLLOWS).scan(10).expectResetAccepted(Fault.GENERATOR_FAULT);
  }

  @Test
  @Requirement("SR-11")
  @DisplayName("the pulses of degassing are no fault, nor is a generator without mains")
  void pulsesAreNoFault() {
    ScanRig.in(Phase.DEGASSING).advance(19_000).expectNoFault();
    ScanRig.selfTested().mains(false).generatorRunning(STUCK_ON).advance(5_000).expectNoFault();
  }

  @Test
  @Requirement("SR-12")
  @DisplayName("a drain that is open for its time over a wet minimum is blocked")
  void drainBlocked() {
    DeviceProfile hasty = ScanRig.PROFILE.with(Parameter.DRAIN_MAXIMUM, 30_000);
    ScanRig rig = ScanRig.in(Phase.DRAINING, hasty).expectDriven(false, false, true);
    rig.advance(30_000).expectNoFault().expectDriven(false, false, true);
    rig.scan(10).expectTrip(Fault.DRAIN_BLOCKED);
    rig.expectResetAccepted(Fault.DRAIN_BLOCKED);
  }

  @Test
  @Requirement("SR-12")
  @DisplayName("a tank that empties in time is drained")
  void drainFlows() {
    ScanRig rig = ScanRig.in(Phase.DRAINING).advance(599_000).level(false, false);
    rig.advance(60_000).expectNoFault().expect(Phase.DRAINING).expectDriven(false, false, true);
    rig.scan(10).expect(Phase.STANDBY).expectNothingDriven();
  }

  @ParameterizedTest(name = "open end {0}, closed end {1}")
  @CsvSource({"false, false", "true, false", "true, true"})
  @Requirement("SR-13")
  @DisplayName("a valve that is not closed for 5 s at rest locks out, and nothing is started")
  void valveNotClosed(boolean openEnd, boolean closedEnd) {
    ScanRig rig = ScanRig.selfTested().valveJammed(openEnd, closedEnd);
    rig.start(ScanRig.SHORT).expectRefused(Command.START, Refusal.DRAIN_NOT_CLOSED);
    rig.advance(4_990).expectNoFault().expectNothingDriven();
    rig.scan(10).expectTrip(Fault.VALVE_NOT_IN_PLACE);
    rig.expectResetRefused(Refusal.CAUSE_PRESENT);
    rig.valveFree().scan(10).expectResetAccepted(Fault.VALVE_NOT_IN_PLACE);
  }

  @ParameterizedTest(name = "open end {0}, closed end {1}")
  @CsvSource({"false, false", "true, false", "true, true"})
  @Requirement("SR-13")
  @DisplayName("heat and sound stop in the scan in which the drain is not surely closed")
  void nothingRunsOverAnOpenDrain(boolean openEnd, boolean closedEnd) {
    ScanRig heating = ScanRig.in(Phase.HEATING).expectDriven(true, false, false);
    heating.valveJammed(openEnd, closedEnd).scan(10).expectNothingDriven();
    ScanRig cleaning = ScanRig.in(Phase.CLEANING).expectDriven(false, true, false);
    cleaning.valveJammed(openEnd, closedEnd).scan(10).expectNothingDriven();
  }

  @Test
  @Requirement("SR-13")
  @DisplayName("a valve that does not open for 5 s locks out")
  void valveDoesNotOpen() {
    ScanRig rig = ScanRig.selfTested().valveJammed(false, true).press(Command.DRAIN);
    rig.advance(5_000).expectNoFault().expect(Phase.DRAINING);
    rig.scan(10).expectTrip(Fault.VALVE_NOT_IN_PLACE);
    rig.expectResetAccepted(Fault.VALVE_NOT_IN_PLACE);
  }
}
