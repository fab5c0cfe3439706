package dev.tankwright.controller.drive;

import static dev.tankwright.trace.CountedAssertions.assertEquals;

import dev.tankwright.controller.board.DeviceProfile;
import dev.tankwright.controller.board.Parameter;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** With round figures: a band of 1 K, an integral time of 100 s and a switching period of 10 s. */
class ProportionalIntegralTest {
  private final ProportionalIntegralControl regulation =
      new ProportionalIntegralControl(
          DeviceProfile.sixLitre()
              .with(Parameter.PROPORTIONAL_BAND, 1_000)
              .with(Parameter.INTEGRAL_TIME, 100_000)
              .with(Parameter.SWITCHING_PERIOD, 10_000));

  @Test
  @DisplayName("half the band is half the period, and a tenth of it is added to the integral")
  void proportionalAndIntegral() {
    assertEquals(5_000, onMs(500));
    assertEquals(500, onMs(0));
    assertEquals(500, onMs(0), "no deviation adds nothing");
  }

  @Test
  @DisplayName("the integral stands still while the share is just full, or just nothing")
  void integralStandsStillAtTheEnds() {
    onMs(500);
    assertEquals(10_000, onMs(950), "0.95 and 0.05 from the integral");
    assertEquals(500, onMs(0));
    assertEquals(0, onMs(-50));
    assertEquals(500, onMs(0));
    assertEquals(10_000, onMs(5_000), "beyond the band");
    assertEquals(0, onMs(-5_000));
    assertEquals(500, onMs(0));
  }

  @Test
  @DisplayName("reset begins a period at once and forgets the integral")
  void resetForgets() {
    onMs(500);
    regulation.regulate(500, 10);
    regulation.reset();
    assertEquals(0, onMs(0));
  }

  /** For how long one whole period heats at a deviation, ms. */
  private int onMs(int deviationMilliK) {
    int on = 0;
    for (int ms = 0; ms < 10_000; ms += 10) {
      on += regulation.regulate(deviationMilliK, 10) ? 10 : 0;
    }
    return on;
  }
}
