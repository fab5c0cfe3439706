package dev.tankwright.loop;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.tankwright.controller.board.DeviceProfile;
import dev.tankwright.plant.BathStart;
import dev.tankwright.scenario.profile.BuiltInBaths;
import java.util.List;
import org.junit.jupiter.api.Test;

class ForcedPinsTest {
  private final ClosedLoop loop =
      new ClosedLoop(
          DeviceProfile.sixLitre(), BuiltInBaths.usual(), new BathStart(4.5, 30, 21, 1), 1);

  @Test
  void aForcedPinWinsUntilItIsReleased() {
    run(100);
    assertFalse(loop.outputs().panel.lidOpen);
    loop.perform(new Action.Force(List.of(new PinForce(Pin.LID_MAKE_CONTACT, 0))));
    run(1);
    assertTrue(loop.outputs().panel.lidOpen);
    assertEquals(0, loop.value(Signal.LID_OPEN), "the lid itself has not moved");
    loop.perform(new Action.Release(List.of(Pin.LID_MAKE_CONTACT)));
    run(10);
    assertFalse(loop.outputs().panel.lidOpen);
  }

  @Test
  void everyScanIsJudgedByTheRules() {
    run(200);
    assertEquals(0, loop.value(Signal.BROKEN_RULE));
  }

  private void run(int scans) {
    for (int scan = 0; scan < scans; scan++) {
      loop.scan();
      loop.drainNotices((kind, first, second, uptime) -> {});
      loop.checkRules();
      loop.advance();
    }
  }
}
