package dev.tankwright.controller.sequence;

import static dev.tankwright.trace.CountedAssertions.assertEquals;
import static dev.tankwright.trace.CountedAssertions.assertFalse;
import static dev.tankwright.trace.CountedAssertions.assertTrue;

import dev.tankwright.controller.Converter;
import dev.tankwright.controller.ScanRig;
import dev.tankwright.controller.board.Command;
import dev.tankwright.controller.board.DeviceProfile;
import dev.tankwright.controller.board.Inputs;
import dev.tankwright.controller.board.Phase;
import dev.tankwright.controller.board.Programme;
import dev.tankwright.controller.board.Recipe;
import dev.tankwright.controller.sensing.Channel;
import dev.tankwright.controller.sensing.Measurements;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

class CycleTallyTest {
  private final DeviceProfile profile = DeviceProfile.sixLitre();
  private final CycleTally tally = new CycleTally();

  @Test
  @DisplayName("a tally says which cycle it is of, and for how long what was driven")
  void saysWhichCycle() {
    ScanRig rig = ScanRig.selfTested();
    assertEquals(0, rig.controller.cycleTally().number());
    rig.start(new Recipe(Programme.HEAVY, 45_000, 20_000, 30_000));
    CycleTally of = rig.controller.cycleTally();
    assertEquals(1, of.number());
    assertEquals(Programme.HEAVY, of.programme());
    assertEquals(45_000, of.setpointMilliC());
    assertEquals(1_000, of.startedMs(), "the first scan lasts 0 ms");
    assertEquals(1_000, rig.controller.uptimeMs());
    rig.advance(1_000);
    assertEquals(1_010, of.heaterMs(), "heated from the scan of the start");
    assertEquals(1_010, of.phaseMs(Phase.HEATING));
    assertEquals(0, of.ultrasoundMs());
    assertFalse(of.hasTemperatures(), "heating up is not counted");
  }

  @Test
  @DisplayName("the next cycle's tally begins with nothing of the last one")
  void beginsWithNothing() {
    ScanRig rig = ScanRig.in(Phase.CLEANING).advance(1_000).press(Command.PAUSE);
    rig.advance(1_000).press(Command.RESUME).advance(1_000).controlCounts(4_095).advance(200);
    CycleTally of = rig.expect(Phase.LOCKOUT).controller.cycleTally();
    assertTrue(of.isDegassed() && of.hasTemperatures() && of.faultBits() != 0);
    assertEquals(1, of.interruptions());
    assertTrue(of.phaseMs(Phase.PAUSED) > 0 && of.ultrasoundMs() > 0 && of.heaterMs() > 0);

    rig.warm(25).advance(10).press(Command.RESET).advance(1_000).start(ScanRig.SHORT);
    assertEquals(2, of.number());
    assertEquals(0, of.interruptions());
    assertEquals(0, of.faultBits());
    assertEquals(0, of.ultrasoundMs());
    assertEquals(10, of.heaterMs());
    assertFalse(of.isDegassed() || of.hasTemperatures());
    for (Phase phase : Phase.values()) {
      assertEquals(phase == Phase.HEATING ? 10 : 0, of.phaseMs(phase), phase.name());
    }
    rig.warm(ScanRig.WARM).advance(20);
    assertEquals(of.minimumMilliC(), of.maximumMilliC());
    assertEquals(of.minimumMilliC(), of.meanMilliC());
  }

  @Test
  @DisplayName("faults of all scans add up, and so do those that ended the cycle")
  void faultsAddUp() {
    tally.begin(ScanRig.SHORT, 0);
    tally.scan(Phase.CLEANING, channel(40), true, true, 0b001, 10);
    tally.scan(Phase.CLEANING, channel(40), true, true, 0b010, 10);
    assertEquals(0b011, tally.faultBits());
    tally.endedBy(0b100);
    assertEquals(0b111, tally.faultBits());
  }

  @Test
  @DisplayName("the mean is weighed by time and counts degassing and cleaning alone")
  void meanIsWeighed() {
    tally.begin(ScanRig.SHORT, 0);
    tally.scan(Phase.HEATING, channel(20), false, true, 0, 1_000);
    tally.scan(Phase.DEGASSING, channel(30), true, false, 0, 90);
    tally.scan(Phase.PAUSED, channel(60), false, false, 0, 1_000);
    tally.scan(Phase.CLEANING, channel(40), true, false, 0, 10);
    assertTrue(tally.hasTemperatures());
    assertEquals(31_000, tally.meanMilliC(), 50);
    assertEquals(30_000, tally.minimumMilliC(), 50);
    assertEquals(40_000, tally.maximumMilliC(), 50);
    assertEquals(100, tally.ultrasoundMs());
    assertEquals(1_000, tally.heaterMs());
  }

  private Channel channel(double celsius) {
    Measurements measured = new Measurements(profile);
    Inputs inputs = new Inputs();
    inputs.controlSensorCounts = Converter.counts(celsius, profile);
    measured.sense(inputs);
    return measured.control();
  }
}
