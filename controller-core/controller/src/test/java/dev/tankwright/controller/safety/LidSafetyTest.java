package dev.tankwright.controller.safety;

import static dev.tankwright.trace.CountedAssertions.assertEquals;

import dev.tankwright.controller.ScanRig;
import dev.tankwright.controller.board.Command;
import dev.tankwright.controller.board.CycleCause;
import dev.tankwright.controller.board.Fault;
import dev.tankwright.controller.board.NoticeKind;
import dev.tankwright.controller.board.Phase;
import dev.tankwright.controller.board.Refusal;
import dev.tankwright.trace.Requirement;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class LidSafetyTest {
  @ParameterizedTest(name = "make contact {0}, break contact {1}")
  @CsvSource({"false, true", "false, false", "true, true"})
  @Requirement("SR-01")
  @DisplayName("ultrasound stops in the very scan in which one contact stops saying closed")
  void soundStopsInTheSameScan(boolean make, boolean breaking) {
    ScanRig rig = ScanRig.in(Phase.CLEANING).advance(1_000).expectDriven(false, true, false);
    rig.lidContacts(make, breaking).scan(10).expectNothingDriven().expect(Phase.PAUSED);
    rig.expectNoted(NoticeKind.CYCLE_PAUSED, CycleCause.LID.ordinal()).expectNoFault();
  }

  @ParameterizedTest
  @EnumSource(
      value = Phase.class,
      names = {"HEATING", "DEGASSING", "CLEANING"})
  @Requirement("SR-01")
  @DisplayName("closing the lid restarts nothing; resuming on purpose does")
  void closingRestartsNothing(Phase held) {
    ScanRig rig = ScanRig.in(held);
    boolean heats = rig.outputs.heaterRelay;
    boolean sounds = rig.outputs.ultrasoundEnable;
    rig.lid(false).advance(500).expect(Phase.PAUSED);
    rig.lid(true).advance(60_000).expect(Phase.PAUSED).expectNothingDriven();
    rig.press(Command.RESUME).expect(held).expectDriven(heats, sounds, false);
  }

  @Test
  @Requirement("SR-01")
  @DisplayName("a start over an open lid is refused with an advisory that drives nothing")
  void startOverOpenLid() {
    ScanRig rig = ScanRig.selfTested().lid(false).advance(100);
    rig.start(ScanRig.SHORT).expectRefused(Command.START, Refusal.LID_OPEN);
    rig.expect(Phase.STANDBY).expectNothingDriven();
    assertEquals(Fault.LID_OPEN_AT_START, rig.outputs.panel.fault);

    // A second try is a second refusal, and no second fault.
    rig.start(ScanRig.SHORT).expectRefused(Command.START, Refusal.LID_OPEN);
    assertEquals(1, raised(rig, Fault.LID_OPEN_AT_START));

    // The next accepted start clears it.
    rig.lid(true).advance(100).start(ScanRig.SHORT).expect(Phase.HEATING).expectNoFault();
    rig.expectAnnouncedOnce(Fault.LID_OPEN_AT_START);
  }

  @Test
  @Requirement("SR-01")
  @DisplayName("an acknowledgement clears the advisory")
  void acknowledgeClearsAdvisory() {
    ScanRig rig = ScanRig.selfTested().lid(false).advance(100).start(ScanRig.SHORT);
    rig.press(Command.ACKNOWLEDGE).expectAccepted().expect(Phase.STANDBY).expectNoFault();
    rig.expectAnnouncedOnce(Fault.LID_OPEN_AT_START);
  }

  @ParameterizedTest(name = "both contacts say {0}")
  @CsvSource({"true", "false"})
  @Requirement("SR-02")
  @DisplayName("contacts that contradict each other for 500 ms lock out, in any phase")
  void contradictionLocksOut(boolean both) {
    ScanRig rig = ScanRig.in(Phase.CLEANING).lidContacts(both, both);
    rig.advance(500).expectNoFault().expectNothingDriven().expect(Phase.PAUSED);
    rig.scan(10).expectTrip(Fault.LID_CONTRADICTION);
    rig.advance(1_000).expectResetRefused(Refusal.CAUSE_PRESENT);
    rig.lid(true).advance(10).expect(Phase.LOCKOUT);
    rig.expectResetAccepted(Fault.LID_CONTRADICTION);
  }

  @Test
  @Requirement("SR-02")
  @DisplayName("a lid in motion, whose contacts change one after the other, is no fault")
  void motionIsNoFault() {
    ScanRig rig = ScanRig.selfTested();
    for (int i = 0; i < 10; i++) {
      rig.lidContacts(true, true).advance(490).lid(false).advance(100);
      rig.lidContacts(false, false).advance(490).lid(true).advance(100);
    }
    rig.expectNoFault().expect(Phase.STANDBY);
  }

  private static int raised(ScanRig rig, Fault fault) {
    return rig.of(NoticeKind.FAULT_RAISED, fault.ordinal()).size();
  }
}
