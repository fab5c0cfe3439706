package dev.tankwright.controller.sequence;

import static dev.tankwright.trace.CountedAssertions.assertEquals;

import dev.tankwright.controller.ScanRig;
import dev.tankwright.controller.board.Command;
import dev.tankwright.controller.board.CycleCause;
import dev.tankwright.controller.board.DeviceProfile;
import dev.tankwright.controller.board.NoticeKind;
import dev.tankwright.controller.board.Parameter;
import dev.tankwright.controller.board.Phase;
import dev.tankwright.controller.board.Refusal;
import dev.tankwright.trace.Requirement;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class PauseTest {
  private final DeviceProfile hasty = ScanRig.PROFILE.with(Parameter.PAUSE_MAXIMUM, 10_000);

  @ParameterizedTest
  @EnumSource(
      value = Phase.class,
      names = {"HEATING", "DEGASSING", "CLEANING"})
  @Requirement("SR-01")
  @DisplayName("a pause holds the cycle and its time; a resume returns to the held phase")
  void pauseHolds(Phase held) {
    ScanRig rig = ScanRig.in(held).advance(3_000);
    rig.press(Command.PAUSE).expect(Phase.PAUSED).expectNothingDriven();
    rig.expectNoted(NoticeKind.CYCLE_PAUSED, CycleCause.OPERATOR.ordinal());
    int left = rig.outputs.panel.remainingMs;
    rig.advance(120_000).expectNothingDriven();
    assertEquals(left, rig.outputs.panel.remainingMs);
    rig.press(Command.RESUME).expect(held).expectNoted(NoticeKind.CYCLE_RESUMED, held.ordinal());
    assertEquals(left, rig.outputs.panel.remainingMs);
    assertEquals(1, rig.controller.cycleTally().interruptions());
  }

  @Test
  @Requirement("SR-01")
  @DisplayName("a resume over an open or only just closed lid is refused")
  void resumeNeedsClosedLid() {
    ScanRig rig = ScanRig.in(Phase.CLEANING).lid(false).advance(100).press(Command.RESUME);
    rig.expectRefused(Command.RESUME, Refusal.LID_OPEN).expect(Phase.PAUSED);
    rig.lid(true).advance(50).press(Command.RESUME).expect(Phase.CLEANING);

    rig.lid(false).advance(100).lid(true).advance(40).press(Command.RESUME);
    rig.expectRefused(Command.RESUME, Refusal.LID_OPEN).expect(Phase.PAUSED);
  }

  @Test
  @DisplayName("a stop in the scan in which the lid opens ends the cycle")
  void stopBeforeLid() {
    ScanRig.in(Phase.CLEANING)
        .lid(false)
        .press(Command.STOP)
        .expect(Phase.STANDBY)
        .expectNothingDriven()
        .expectNoted(NoticeKind.CYCLE_STOPPED, CycleCause.OPERATOR.ordinal());
  }

  @Test
  @DisplayName("a pause that lasts too long ends the cycle")
  void pauseExpires() {
    ScanRig rig = ScanRig.in(Phase.PAUSED, hasty).advance(10_000).expect(Phase.PAUSED);
    rig.scan(10)
        .expect(Phase.STANDBY)
        .expectNoted(NoticeKind.CYCLE_STOPPED, CycleCause.PAUSE_LIMIT.ordinal());
  }

  @Test
  @DisplayName("refused resumes do not prolong a pause")
  void refusedResumesDoNotProlong() {
    ScanRig rig = ScanRig.in(Phase.PAUSED, hasty).lid(false);
    for (int ms = 0; ms < 10_000; ms += 500) {
      rig.press(Command.RESUME).expect(Phase.PAUSED).advance(490);
    }
    rig.press(Command.RESUME)
        .expect(Phase.STANDBY)
        .expectNoted(NoticeKind.CYCLE_STOPPED, CycleCause.PAUSE_LIMIT.ordinal());
  }

  @ParameterizedTest
  @EnumSource(
      value = Phase.class,
      names = {"HEATING", "DEGASSING", "CLEANING", "PAUSED"})
  @DisplayName("losing mains holds the cycle at once; its return restarts nothing")
  void mainsLost(Phase phase) {
    ScanRig rig = ScanRig.in(phase).mains(false).scan(10).expect(Phase.PAUSED);
    rig.expectNothingDriven();
    rig.press(Command.RESUME).expectRefused(Command.RESUME, Refusal.MAINS_ABSENT);
    rig.mains(true).advance(60_000).expect(Phase.PAUSED).expectNothingDriven().expectNoFault();
    rig.press(Command.RESUME).expect(Phase.HEATING);
  }

  @Test
  @DisplayName("cleaning time counts only while the ultrasound is truly driven")
  void countsWhileDriven() {
    ScanRig rig = ScanRig.in(Phase.CLEANING).advance(1_000);
    int left = rig.outputs.panel.remainingMs;
    // The guard withholds ultrasound while the drain is not surely closed.
    rig.valveJammed(false, false).advance(2_000).expectNothingDriven().valveFree().advance(10);
    assertEquals(left - 10, rig.outputs.panel.remainingMs);
  }
}
