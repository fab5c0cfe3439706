package dev.tankwright.loop;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import dev.tankwright.controller.board.DeviceProfile;
import dev.tankwright.plant.BathStart;
import dev.tankwright.plant.PartFault;
import dev.tankwright.scenario.profile.BuiltInBaths;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** How long a part stays broken. */
class FaultDurationTest {
  private final ClosedLoop loop =
      new ClosedLoop(
          DeviceProfile.sixLitre(), BuiltInBaths.usual(), new BathStart(4.5, 40, 21, 1), 1);

  private void breakFor(PartFault fault, long millis) {
    loop.perform(new Action.Break(fault, fault.usualSize(), millis));
  }

  /** How many steps, from now on, show a broken part. */
  private int brokenSteps(int steps) {
    int broken = 0;
    for (int i = 0; i < steps; i++) {
      loop.scan();
      broken += (int) loop.value(Signal.PART_BROKEN);
      loop.advance();
    }
    return broken;
  }

  @Test
  @DisplayName("a part is whole again by itself after its time")
  void mendsItself() {
    breakFor(PartFault.MAINS_CUT, 200);
    assertEquals(20, brokenSteps(100));
  }

  @Test
  @DisplayName("a part without a time stays broken until it is repaired")
  void forGood() {
    loop.perform(new Action.Break(PartFault.MAINS_CUT));
    assertEquals(100, brokenSteps(100));
    loop.perform(new Action.Repair(PartFault.MAINS_CUT));
    assertEquals(0, brokenSteps(100));
  }

  @Test
  @DisplayName("each part keeps its own time")
  void two() {
    breakFor(PartFault.MAINS_CUT, 500);
    breakFor(PartFault.HEATER_PARTIAL, 300);
    assertEquals(50, brokenSteps(100));
  }

  @Test
  @DisplayName("breaking a part anew counts from then on, for good too")
  void anew() {
    breakFor(PartFault.MAINS_CUT, 200);
    assertEquals(10, brokenSteps(10));
    breakFor(PartFault.MAINS_CUT, 200);
    assertEquals(20, brokenSteps(100));
    breakFor(PartFault.MAINS_CUT, 200);
    loop.perform(new Action.Break(PartFault.MAINS_CUT));
    assertEquals(100, brokenSteps(100));
  }

  @Test
  @DisplayName("a part repaired early stays whole, and broken again does not end at the old time")
  void mendedEarly() {
    breakFor(PartFault.MAINS_CUT, 200);
    loop.perform(new Action.Repair(PartFault.MAINS_CUT));
    assertEquals(0, brokenSteps(10));
    loop.perform(new Action.Break(PartFault.MAINS_CUT));
    assertEquals(50, brokenSteps(50));
  }

  @Test
  @DisplayName("the voltage that is left shows as a share of the nominal one")
  void voltage() {
    loop.perform(new Action.Break(PartFault.MAINS_SAG, 0.25, 30));
    loop.scan();
    loop.advance();
    assertEquals(0.75, loop.value(Signal.MAINS_VOLTAGE));
    brokenSteps(5);
    assertEquals(1, loop.value(Signal.MAINS_VOLTAGE));
  }

  @Test
  @DisplayName("a size that breaks nothing and a negative time are refused")
  void refused() {
    assertThrows(
        IllegalArgumentException.class, () -> new Action.Break(PartFault.HEATER_PARTIAL, 0, 0));
    assertThrows(IllegalArgumentException.class, () -> new Action.Break(PartFault.MAINS_CUT, 1, 0));
    assertThrows(
        IllegalArgumentException.class, () -> new Action.Break(PartFault.MAINS_CUT, 0, -1));
  }
}
