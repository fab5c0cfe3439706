package dev.tankwright.controller;

import static dev.tankwright.trace.CountedAssertions.assertEquals;
import static dev.tankwright.trace.CountedAssertions.assertFalse;
import static dev.tankwright.trace.CountedAssertions.assertTrue;

import dev.tankwright.controller.board.Command;
import dev.tankwright.controller.board.Phase;
import dev.tankwright.controller.board.StateWords;
import dev.tankwright.trace.Requirement;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

class KeepingRuleTest {
  @Test
  @Requirement("SR-24")
  @DisplayName("a device that was never kept wants it; kept or just recalled it does not")
  void atFirst() {
    ScanRig rig = ScanRig.poweredUp(ScanRig.PROFILE).scan(10);
    assertTrue(rig.controller.wantsKeeping());
    keep(rig);
    assertFalse(rig.controller.wantsKeeping());
    rig.cutPower(1).scan(10);
    assertFalse(rig.controller.wantsKeeping(), "what was recalled is kept");
  }

  @Test
  @Requirement("SR-24")
  @DisplayName("what is due is kept when it changes, though phase and faults stay as they are")
  void dues() {
    ScanRig rig = ScanRig.in(Phase.COMPLETE).press(Command.ACKNOWLEDGE);
    keep(rig);
    rig.scan(10);
    assertFalse(rig.controller.wantsKeeping());
    rig.press(Command.FRESH_SOLUTION).expect(Phase.STANDBY).expectNoFault();
    assertTrue(rig.controller.wantsKeeping(), "degassing is owed");
  }

  @Test
  @Requirement("SR-24")
  @DisplayName("outside a cycle the counters are kept every ten minutes, in a pause every 10 s")
  void intervals() {
    assertEquals(600_000, untilWanted(ScanRig.in(Phase.STANDBY)));
    assertEquals(600_000, untilWanted(ScanRig.in(Phase.COMPLETE)));
    assertEquals(10_000, untilWanted(ScanRig.in(Phase.PAUSED)));
    assertEquals(10_000, untilWanted(ScanRig.in(Phase.CLEANING)));
  }

  private static long untilWanted(ScanRig rig) {
    keep(rig);
    long from = rig.now();
    while (!rig.controller.wantsKeeping()) {
      rig.scan(10);
    }
    return rig.now() - from;
  }

  private static void keep(ScanRig rig) {
    StateWords kept = new StateWords(rig.controller.keptWords());
    kept.beginCapture();
    rig.controller.keep(kept);
  }
}
