package dev.tankwright.controller.safety;

import static dev.tankwright.trace.CountedAssertions.assertEquals;

import dev.tankwright.controller.Converter;
import dev.tankwright.controller.IdealBoard;
import dev.tankwright.controller.board.DeviceProfile;
import dev.tankwright.controller.board.Fault;
import dev.tankwright.controller.board.Inputs;
import dev.tankwright.controller.board.Outputs;
import dev.tankwright.controller.board.ProgramFlow;
import dev.tankwright.controller.drive.Demand;
import dev.tankwright.controller.drive.Wanted;
import dev.tankwright.controller.sensing.Measurements;
import dev.tankwright.trace.Requirement;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** The guard alone, under a sequence gone wrong that wants heat and ultrasound whatever happens. */
class GuardTest {
  private final DeviceProfile profile = DeviceProfile.sixLitre();
  private final ProgramFlow flow = new ProgramFlow();
  private final FaultLatch latch = new FaultLatch(new Silent());
  private final Measurements measured = new Measurements(profile, flow);
  private final Demand demand = new Demand();
  private final Wanted wanted = new Wanted();
  private final Guard guard = new Guard(profile, latch, measured, demand, wanted, flow);
  private final Inputs inputs = new Inputs();
  private final Outputs outputs = new Outputs();

  @BeforeEach
  void everythingIsInOrderAndDriven() {
    IdealBoard.rest(inputs);
    inputs.controlSensorCounts = Converter.counts(40, profile);
    inputs.cutOffSensorCounts = inputs.controlSensorCounts;
    demand.heatToMilliC = 40_000;
    wanted.heater = true;
    wanted.ultrasound = true;
    wanted.drivePermille = 1_000;
    wanted.driveFrequencyHz = 40_000;
    scans(10);
    expect(true, true, false);
  }

  static Stream<Arguments> losses() {
    return Stream.of(
        loss("make contact open", in -> in.lidMakeContact(false), true, false),
        loss("break contact closed", in -> in.lidBreakContact(true), true, false),
        loss("control sensor open", in -> in.controlSensorCounts = 4_095, false, true),
        loss("cut-off sensor shorted", in -> in.cutOffSensorCounts = 0, false, true),
        loss("drain off its closed end", in -> in.drainClosedEnd(false), false, false),
        loss("drain at both ends", in -> in.drainOpenEnd(true), false, false),
        loss("mains absent", in -> in.mainsPresent(false), false, false));
  }

  private static Arguments loss(String name, Consumer<Inputs> event, boolean heat, boolean sound) {
    return Arguments.of(name, event, heat, sound);
  }

  @ParameterizedTest(name = "{0}: heat {2}, ultrasound {3}")
  @MethodSource("losses")
  @Requirement({"SR-01", "SR-05", "SR-13"})
  @DisplayName("what is not permitted is withheld in the same scan")
  void withholds(String name, Consumer<Inputs> event, boolean heat, boolean sound) {
    event.accept(inputs);
    scans(1);
    assertEquals(0, latch.bits(), "no fault is latched yet: the permit alone acts");
    expect(heat, sound, false);
  }

  @Test
  @Requirement("SR-09")
  @DisplayName("over a dry tank nothing is driven after the dry time")
  void dryTank() {
    inputs.minimumLevelWet(false);
    inputs.fillMarkWet(false);
    scans(5);
    expect(true, true, false);
    scans(1);
    expect(false, false, false);
    assertEquals(Fault.DRY_TANK.bit(), latch.bits());
  }

  @Test
  @Requirement("SR-13")
  @DisplayName(
      "the valve stays closed while heat or ultrasound is driven, and they while it is open")
  void valveExcludesHeatAndSound() {
    wanted.drain = true;
    scans(10);
    expect(true, true, false);
    wanted.heater = false;
    scans(1);
    expect(false, true, false);
    wanted.ultrasound = false;
    scans(1);
    expect(false, false, true);
    wanted.heater = true;
    wanted.ultrasound = true;
    scans(10);
    expect(false, false, true);
  }

  @Test
  @Requirement("SR-03")
  @DisplayName("any latched fault that stops withholds everything, an advisory nothing")
  void latchedFaults() {
    latch.raise(Fault.LID_OPEN_AT_START);
    scans(1);
    expect(true, true, false);
    latch.raise(Fault.GENERATOR_FAULT);
    scans(1);
    expect(false, false, false);
    assertEquals(true, outputs.cutOffRelay);
    latch.raise(Fault.OVERSHOOT);
    scans(1);
    assertEquals(false, outputs.cutOffRelay);
  }

  @Test
  @Requirement("SR-20")
  @DisplayName("switched off it drives nothing and knows so")
  void switchesOff() {
    outputs.drainValveOpen = true;
    guard.switchOff(outputs);
    expect(false, false, false);
    assertEquals(0, outputs.drivePermille);
    assertEquals(false, outputs.cutOffRelay);
    assertEquals(Fault.PROGRAM_FLOW.bit(), latch.bits());
    assertEquals(false, guard.isSonicating() || guard.isHeating());
  }

  private void expect(boolean heater, boolean ultrasound, boolean drain) {
    assertEquals(heater, outputs.heaterRelay, "heater");
    assertEquals(ultrasound, outputs.ultrasoundEnable, "ultrasound");
    assertEquals(ultrasound ? 40_000 : 0, outputs.driveFrequencyHz);
    assertEquals(drain, outputs.drainValveOpen, "drain valve");
  }

  private void scans(int count) {
    for (int i = 0; i < count; i++) {
      inputs.millis += 10;
      measured.sense(inputs);
      guard.watch();
      guard.drive(outputs);
      inputs.heaterCurrent(outputs.heaterRelay);
      inputs.generatorRunning(outputs.ultrasoundEnable);
    }
  }

  /** Hears and keeps nothing. */
  private static final class Silent implements FaultLog {
    @Override
    public void raised(Fault fault) {}

    @Override
    public void cleared(Fault fault) {}
  }
}
