package dev.tankwright.controller.safety;

import static dev.tankwright.trace.CountedAssertions.assertTrue;

import dev.tankwright.controller.ScanRig;
import dev.tankwright.controller.board.Command;
import dev.tankwright.controller.board.Fault;
import dev.tankwright.controller.board.Phase;
import dev.tankwright.controller.board.Refusal;
import dev.tankwright.trace.Requirement;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ClockSafetyTest {
  @ParameterizedTest(name = "step of {0} ms")
  @ValueSource(ints = {101, 1_000_000, Integer.MAX_VALUE, -1, -10, Integer.MIN_VALUE})
  @Requirement("SR-14")
  @DisplayName("a counter that jumps, to either side, cuts off in the same scan")
  void jump(int step) {
    ScanRig rig = ScanRig.in(Phase.HEATING).scan(step).expectTrip(Fault.CLOCK_FAULT);
    // A jump lasts one scan; the reset sees it gone after the next.
    rig.scan(10).expectResetAccepted(Fault.CLOCK_FAULT);
  }

  @Test
  @Requirement("SR-14")
  @DisplayName("a scan that is late by up to 100 ms is no fault")
  void lateScan() {
    ScanRig rig = ScanRig.in(Phase.CLEANING);
    for (int i = 0; i < 100; i++) {
      rig.scan(100);
    }
    rig.expectNoFault().expect(Phase.CLEANING);
  }

  @Test
  @Requirement("SR-14")
  @DisplayName("a counter that stands still for five scans cuts off")
  void stall() {
    ScanRig rig = ScanRig.in(Phase.CLEANING);
    for (int i = 0; i < 4; i++) {
      rig.scan(0).expectNoFault();
    }
    rig.scan(0).expectTrip(Fault.CLOCK_FAULT);
    rig.inputs.command = Command.RESET;
    rig.inputs.commandSequence++;
    rig.scan(0).expect(Phase.LOCKOUT);
    assertTrue(rig.outputs.panel.refusal == Refusal.CAUSE_PRESENT);
    rig.scan(10).expectResetAccepted(Fault.CLOCK_FAULT);
  }

  @Test
  @Requirement("SR-14")
  @DisplayName("the wrap of the counter at 2^32 is no fault")
  void wrap() {
    ScanRig rig = ScanRig.poweredUp(ScanRig.PROFILE);
    rig.inputs.millis = -2_000;
    rig.advance(1_000).start(ScanRig.SHORT).warm(40).advance(10_000);
    assertTrue(rig.inputs.millis > 0);
    rig.expectNoFault().expect(Phase.DEGASSING);
  }
}
