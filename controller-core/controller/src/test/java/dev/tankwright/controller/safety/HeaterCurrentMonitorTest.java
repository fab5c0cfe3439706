package dev.tankwright.controller.safety;

import static dev.tankwright.trace.CountedAssertions.assertEquals;
import static dev.tankwright.trace.CountedAssertions.assertFalse;
import static dev.tankwright.trace.CountedAssertions.assertTrue;

import dev.tankwright.controller.IdealBoard;
import dev.tankwright.controller.board.DeviceProfile;
import dev.tankwright.controller.board.Inputs;
import dev.tankwright.controller.board.ProgramFlow;
import dev.tankwright.controller.drive.Demand;
import dev.tankwright.controller.drive.Wanted;
import dev.tankwright.controller.sensing.Measurements;
import dev.tankwright.trace.Requirement;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** The monitor alone, whatever the guard drives. */
class HeaterCurrentMonitorTest {
  private final DeviceProfile profile = DeviceProfile.sixLitre();
  private final Measurements measured = new Measurements(profile, new ProgramFlow());
  private final Driven driven = new Driven();
  private final Watch watch = new Watch(measured, new Demand(), new Wanted(), driven);
  private final Monitor monitor = new HeaterCurrentMonitor(profile);
  private final Inputs inputs = new Inputs();

  @Test
  @Requirement("SR-08")
  @DisplayName("current is missed only where the heater, the cut-off relay and mains are all on")
  void missed() {
    for (int which = 0; which < 16; which++) {
      IdealBoard.rest(inputs);
      driven.set((which & 1) != 0, (which & 2) != 0, true, true);
      inputs.mainsPresent((which & 4) != 0);
      inputs.heaterCurrent((which & 8) != 0);
      measured.sense(inputs);
      assertEquals(which == 0b0111, monitor.holds(watch), Integer.toBinaryString(which));
    }
  }

  @Test
  @Requirement("SR-09")
  @DisplayName("each drive has its own bit; the solution is in use while it is heated or sounded")
  void drives() {
    int words = 0;
    for (int which = 0; which < 16; which++) {
      driven.set((which & 1) != 0, (which & 2) != 0, (which & 4) != 0, (which & 8) != 0);
      assertEquals((which & 1) != 0, driven.heater());
      assertEquals((which & 2) != 0, driven.cutOffRelay());
      assertEquals((which & 4) != 0, driven.ultrasound());
      assertEquals((which & 8) != 0, driven.drain());
      assertEquals((which & 5) != 0, driven.inUse());
      words |= 1 << driven.word();
    }
    assertEquals(0xFFFF, words, "sixteen words for sixteen states");
    assertTrue(driven.inUse());
    driven.set(false, true, false, true);
    assertFalse(driven.inUse());
  }
}
