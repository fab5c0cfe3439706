package dev.tankwright.controller;

import static dev.tankwright.trace.CountedAssertions.assertEquals;
import static dev.tankwright.trace.CountedAssertions.assertFalse;
import static dev.tankwright.trace.CountedAssertions.assertNotEquals;
import static dev.tankwright.trace.CountedAssertions.assertTrue;

import dev.tankwright.controller.board.Command;
import dev.tankwright.controller.board.Fault;
import dev.tankwright.controller.board.NoticeKind;
import dev.tankwright.controller.board.Phase;
import dev.tankwright.controller.board.ProgramFlow;
import dev.tankwright.controller.board.Refusal;
import dev.tankwright.trace.Requirement;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What goes wrong on the board itself: program flow and memory. */
class BoardFaultTest {
  @Test
  @Requirement("SR-20")
  @DisplayName("a scan whose stages were out of order switches everything off and pulses nothing")
  void programFlow() {
    ScanRig rig = ScanRig.in(Phase.CLEANING);
    boolean before = rig.outputs.watchdogPulse;
    rig.controller.flow().pass(ProgramFlow.DRIVEN);
    rig.scan(10).expectNothingDriven();
    assertEquals(before, rig.outputs.watchdogPulse, "the watchdog sees no change");
    assertFalse(rig.outputs.cutOffRelay);
    rig.expectNoted(NoticeKind.FAULT_RAISED, Fault.PROGRAM_FLOW.ordinal());
    rig.scan(10).expect(Phase.LOCKOUT).expectNothingDriven();
    assertNotEquals(before, rig.outputs.watchdogPulse, "the next scan was in order");
    rig.expectResetRefused(Refusal.SERVICE_NEEDED);
  }

  @Test
  @Requirement("SR-20")
  @DisplayName("also where nothing was driven and nothing else is news, the next scan locks out")
  void programFlowAtRest() {
    ScanRig rig = ScanRig.selfTested().mains(false).advance(150);
    rig.expectNothingDriven().press(Command.NONE);
    rig.controller.flow().pass(ProgramFlow.DRIVEN);
    rig.scan(10).expectNoted(NoticeKind.FAULT_RAISED, Fault.PROGRAM_FLOW.ordinal());
    rig.scan(10).expect(Phase.LOCKOUT);
  }

  @Test
  @Requirement("SR-18")
  @DisplayName("a record that cannot be believed cuts off; the worst is taken for true")
  void recordDamaged() {
    ScanRig rig = ScanRig.poweredUp(ScanRig.PROFILE);
    rig.controller.recallFailed();
    rig.scan(10).expect(Phase.LOCKOUT).expectNothingDriven();
    assertEquals(Fault.MEMORY_CORRUPT, rig.outputs.panel.fault);
    assertTrue(rig.outputs.panel.solutionDue, "nobody knows how old the solution is");
    assertTrue(rig.outputs.panel.degassingRequired);
    rig.press(Command.RESET).advance(1_000).expect(Phase.STANDBY).expectNoFault();
    rig.press(Command.FRESH_SOLUTION).advance(10);
    assertFalse(rig.outputs.panel.solutionDue);
  }

  @ParameterizedTest
  @ValueSource(ints = {0, 1, 7})
  @Requirement("SR-18")
  @DisplayName("what cannot be kept cuts off in the next scan, also in one in which nothing is new")
  void notKept(int stillScans) {
    ScanRig rig = ScanRig.in(Phase.CLEANING);
    for (int scan = 0; scan < stillScans; scan++) {
      rig.scan(10).expect(Phase.CLEANING);
    }
    rig.controller.keepFailed();
    // Who looks at the cycle meanwhile does not put it off.
    assertTrue(rig.controller.cycleTally().ultrasoundMs() > 0);
    rig.scan(10).expect(Phase.LOCKOUT).expectNothingDriven();
    assertFalse(rig.outputs.cutOffRelay);
    assertEquals(Fault.MEMORY_CORRUPT, rig.outputs.panel.fault);
    rig.expectNoted(NoticeKind.FAULT_RAISED, Fault.MEMORY_CORRUPT.ordinal());
    rig.press(Command.RESET).advance(1_000).expect(Phase.STANDBY).expectNoFault();
    rig.controller.keepFailed();
    rig.scan(10).expect(Phase.LOCKOUT);
  }

  @Test
  @Requirement("SR-18")
  @DisplayName("a table that has changed in memory cuts off within two rounds of its check")
  void tableDamaged() {
    ScanRig rig = ScanRig.in(Phase.STANDBY);
    rig.controller.measured().damageTable();
    int rounds = 2 * 8 * 4_096 * 10;
    rig.until(Phase.LOCKOUT, rounds);
    assertEquals(Fault.MEMORY_CORRUPT, rig.outputs.panel.fault);
    rig.expectResetRefused(Refusal.CAUSE_PRESENT);
  }
}
