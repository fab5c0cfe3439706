package dev.tankwright.controller.drive;

import static dev.tankwright.trace.CountedAssertions.assertEquals;
import static dev.tankwright.trace.CountedAssertions.assertFalse;
import static dev.tankwright.trace.CountedAssertions.assertTrue;

import dev.tankwright.controller.board.DeviceProfile;
import dev.tankwright.controller.board.Parameter;
import dev.tankwright.trace.Requirement;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Both kinds of regulation around a bath of first order with a lagging sensor. */
class HeaterControlModesTest {
  private static final int SETPOINT = 40_000;
  private static final int HOUR = 3_600_000;

  private final DeviceProfile profile = DeviceProfile.sixLitre();
  private final OnOffControl deadBand = new OnOffControl(profile);
  private final ProportionalIntegralControl pi = new ProportionalIntegralControl(profile);
  private FirstOrderBath bath;

  @BeforeEach
  void fillBath() {
    bath = new FirstOrderBath(20);
  }

  @Test
  @Requirement("SR-04")
  @DisplayName("the dead band holds the solution within its width and what the lag adds")
  void deadBandHolds() {
    runDeadBand(2 * HOUR);
    bath.forgetExtremes();
    runDeadBand(2 * HOUR);
    assertTrue(bath.lowest() > 39.4 && bath.highest() < 41.0, bath.toString());
    // A relay lives long only if it switches seldom.
    assertTrue(bath.switchings() < 120, bath.toString());
  }

  @Test
  @DisplayName("the dead band switches at its edges and holds between them")
  void deadBandEdges() {
    assertFalse(deadBand.regulate(299));
    assertTrue(deadBand.regulate(300));
    assertTrue(deadBand.regulate(-299));
    assertFalse(deadBand.regulate(-300));
    assertFalse(deadBand.regulate(299));
    deadBand.regulate(300);
    deadBand.reset();
    assertFalse(deadBand.regulate(0));
  }

  @Test
  @Requirement("SR-04")
  @DisplayName("proportional-integral regulation settles on its setpoint without offset")
  void integralSettles() {
    runIntegral(3 * HOUR);
    bath.forgetExtremes();
    runIntegral(HOUR);
    assertEquals(40.0, bath.mean(), 0.1);
    assertTrue(bath.lowest() > 39.7 && bath.highest() < 40.3, bath.toString());
  }

  @ParameterizedTest(name = "from {0} °C")
  @ValueSource(ints = {5, 20, 35})
  @Requirement("SR-04")
  @DisplayName("a long heat-up does not wind the integral up: overshoot stays below 2 K")
  void noWindUp(int from) {
    bath = new FirstOrderBath(from);
    runIntegral(3 * HOUR);
    assertTrue(bath.highest() < 42, bath.toString());
  }

  @Test
  @DisplayName("the integral stands still while the heater is at full power, for hours on end")
  void integralStandsAtFullPower() {
    for (int ms = 0; ms < 5 * HOUR; ms += 10) {
      assertTrue(pi.regulate(2_000, 10), "full power at the edge of the band");
    }
    // At the setpoint only the integral is left, and there is none.
    int on = 0;
    for (int ms = 0; ms < 20_000; ms += 10) {
      on += pi.regulate(0, 10) ? 10 : 0;
    }
    assertTrue(on <= 10_000, "on for " + on + " ms after the last full period");
  }

  @ParameterizedTest(name = "deviation {0} mK")
  @ValueSource(ints = {100, 500, 1_000, 1_500})
  @DisplayName("the share of the switching period is the deviation's share of the band")
  void shareIsProportional(int deviation) {
    int on = 0;
    for (int ms = 0; ms < profile.get(Parameter.SWITCHING_PERIOD); ms += 10) {
      on += pi.regulate(deviation, 10) ? 10 : 0;
    }
    assertEquals(5 * deviation, on, "ms of a period of 10 s");
  }

  @Test
  @DisplayName("above the setpoint there is no heat, and a reset forgets the integral")
  void noHeatAbove() {
    for (int ms = 0; ms < HOUR; ms += 10) {
      assertFalse(pi.regulate(-1, 10));
    }
    for (int ms = 0; ms < HOUR; ms += 10) {
      pi.regulate(1_000, 10);
    }
    pi.reset();
    assertFalse(pi.regulate(0, 10));
  }

  private void runDeadBand(int ms) {
    for (int passed = 0; passed < ms; passed += 10) {
      bath.step(deadBand.regulate(SETPOINT - bath.sensorMilliC()), 10);
    }
  }

  private void runIntegral(int ms) {
    for (int passed = 0; passed < ms; passed += 10) {
      bath.step(pi.regulate(SETPOINT - bath.sensorMilliC(), 10), 10);
    }
  }
}
