package dev.tankwright.controller.safety;

import static dev.tankwright.trace.CountedAssertions.assertEquals;

import dev.tankwright.controller.ScanRig;
import dev.tankwright.controller.board.Command;
import dev.tankwright.controller.board.Fault;
import dev.tankwright.controller.board.Phase;
import dev.tankwright.controller.board.Refusal;
import dev.tankwright.trace.Requirement;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** A key that gives its command again and again. */
class StuckCommandSafetyTest {
  @ParameterizedTest
  @EnumSource(value = Command.class, names = "NONE", mode = EnumSource.Mode.EXCLUDE)
  @Requirement("SR-22")
  @DisplayName("a command repeated every 100 ms for 5 s locks the device, whichever it is")
  void stuck(Command command) {
    ScanRig rig = ScanRig.selfTested();
    rig.inputs.recipe = ScanRig.SHORT;
    hold(rig, command, 5_000);
    rig.expectNoFault();
    hold(rig, command, 300);
    assertEquals(Fault.COMMAND_STUCK, rig.outputs.panel.fault);
    rig.expect(Phase.LOCKOUT).expectNothingDriven();
  }

  @Test
  @Requirement("SR-22")
  @DisplayName("a stuck reset key resets nothing, until it has been silent")
  void stuckReset() {
    ScanRig rig = ScanRig.selfTested();
    hold(rig, Command.RESET, 5_300);
    hold(rig, Command.RESET, 10_000);
    assertEquals(Refusal.CAUSE_PRESENT, rig.outputs.panel.refusal);
    rig.expect(Phase.LOCKOUT).advance(1_000).expectResetAccepted(Fault.COMMAND_STUCK);
  }

  @Test
  @Requirement("SR-22")
  @DisplayName("a reset key that sticks after another key was stuck resets nothing either")
  void anotherStuckKey() {
    ScanRig rig = ScanRig.selfTested();
    hold(rig, Command.PAUSE, 5_300);
    rig.expect(Phase.LOCKOUT);
    hold(rig, Command.RESET, 4_000);
    rig.expect(Phase.LOCKOUT);
    rig.advance(1_000).expectResetAccepted(Fault.COMMAND_STUCK);
  }

  @Test
  @Requirement("SR-22")
  @DisplayName("an impatient operator is no stuck key: other commands or gaps in between")
  void impatient() {
    ScanRig rig = ScanRig.selfTested();
    for (int i = 0; i < 100; i++) {
      rig.press(Command.RESUME).advance(90).press(Command.STOP).advance(90);
    }
    for (int i = 0; i < 50; i++) {
      rig.press(Command.RESUME).advance(400);
    }
    rig.expectNoFault().expect(Phase.STANDBY);
  }

  private static void hold(ScanRig rig, Command command, int ms) {
    for (int passed = 0; passed < ms; passed += 100) {
      rig.press(command).advance(90);
    }
  }
}
