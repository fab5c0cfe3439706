package dev.tankwright.controller.sequence;

import static dev.tankwright.trace.CountedAssertions.assertEquals;
import static dev.tankwright.trace.CountedAssertions.assertFalse;
import static dev.tankwright.trace.CountedAssertions.assertTrue;

import dev.tankwright.controller.ScanRig;
import dev.tankwright.controller.board.Command;
import dev.tankwright.controller.board.DeviceProfile;
import dev.tankwright.controller.board.Inputs;
import dev.tankwright.controller.board.NoticeKind;
import dev.tankwright.controller.board.NoticeRing;
import dev.tankwright.controller.board.Parameter;
import dev.tankwright.controller.board.Phase;
import dev.tankwright.controller.drive.Demand;
import dev.tankwright.controller.drive.Sound;
import dev.tankwright.controller.safety.FaultLatch;
import dev.tankwright.controller.sensing.Measurements;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

class SequenceTest {
  private final DeviceProfile profile = DeviceProfile.sixLitre();

  @Test
  @DisplayName("a pause that follows another one lasts its whole time")
  void pauseBeginsAnew() {
    ScanRig rig = ScanRig.in(Phase.PAUSED, profile.with(Parameter.PAUSE_MAXIMUM, 10_000));
    rig.advance(9_000).press(Command.RESUME).expect(Phase.HEATING);
    rig.press(Command.PAUSE).advance(9_000).expect(Phase.PAUSED);
    rig.press(Command.RESUME).expect(Phase.HEATING);
  }

  @Test
  @DisplayName("draining that was stopped waits for the rest anew when it is taken up again")
  void drainBeginsAnew() {
    int tail = profile.get(Parameter.DRAIN_TAIL);
    ScanRig rig = ScanRig.in(Phase.DRAINING).level(false, false).advance(tail);
    rig.expect(Phase.DRAINING).press(Command.STOP).expect(Phase.STANDBY).advance(1_000);
    rig.press(Command.DRAIN).advance(tail).expect(Phase.DRAINING);
    rig.scan(10).expect(Phase.STANDBY);
    rig.expectNoted(NoticeKind.PHASE_CHANGED, Phase.DRAINING.ordinal());
  }

  @Test
  @DisplayName("a self test after a lockout takes as long as the first one")
  void selfTestBeginsAnew() {
    int time = profile.get(Parameter.SELF_TEST_TIME);
    ScanRig rig = ScanRig.in(Phase.LOCKOUT).press(Command.RESET).expect(Phase.SELF_TEST);
    rig.advance(time).expect(Phase.SELF_TEST).advance(20).expect(Phase.STANDBY);
  }

  @Test
  @DisplayName("a refusal beeps 200 ms, with a reason of its own or without; all else is silent")
  void onlyRefusalsBeep() {
    ScanRig rig = ScanRig.selfTested().press(Command.FRESH_SOLUTION).expectAccepted();
    assertFalse(rig.outputs.buzzer, "an accepted command is silent");
    rig.advance(10);
    assertFalse(rig.outputs.buzzer, "no command is silent");
    rig.press(Command.PAUSE);
    assertTrue(rig.outputs.buzzer, "a command without meaning here");
    rig.advance(190);
    assertTrue(rig.outputs.buzzer);
    rig.advance(10);
    assertFalse(rig.outputs.buzzer, "after 200 ms");
    rig.lid(false).advance(100).start(ScanRig.SHORT);
    assertTrue(rig.outputs.buzzer, "a start over an open lid");
  }

  @Test
  @DisplayName("the panel shows the setpoint of the cycle, and none outside")
  void setpointIsShown() {
    ScanRig rig = ScanRig.selfTested();
    assertEquals(0, rig.outputs.panel.setpointMilliC);
    rig.start(ScanRig.SHORT);
    assertEquals(40_000, rig.outputs.panel.setpointMilliC);
    rig.press(Command.PAUSE);
    assertEquals(40_000, rig.outputs.panel.setpointMilliC);
    rig.press(Command.STOP);
    assertEquals(0, rig.outputs.panel.setpointMilliC);
  }

  @Test
  @DisplayName("a lockout demands nothing from the very scan on")
  void lockOutDemandsNothing() {
    Measurements measured = new Measurements(profile);
    Journal journal = new Journal(new NoticeRing(8));
    Sequence sequence = new Sequence(profile, measured, new FaultLatch(journal), journal);
    Demand demand = new Demand();
    sequence.decide(new Inputs(), false, demand);
    demand.heatToMilliC = 40_000;
    demand.sound(Sound.SWEPT);
    demand.drain = true;

    sequence.lockOut(demand);

    assertEquals(Phase.LOCKOUT, sequence.phase());
    assertEquals(0, demand.heatToMilliC);
    assertEquals(Sound.OFF, demand.sound());
    assertFalse(demand.drain);
  }
}
