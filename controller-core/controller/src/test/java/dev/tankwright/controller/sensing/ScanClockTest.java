package dev.tankwright.controller.sensing;

import static dev.tankwright.trace.CountedAssertions.assertEquals;
import static dev.tankwright.trace.CountedAssertions.assertFalse;
import static dev.tankwright.trace.CountedAssertions.assertTrue;

import dev.tankwright.controller.board.DeviceProfile;
import dev.tankwright.controller.board.Parameter;
import dev.tankwright.controller.board.StateWords;
import dev.tankwright.trace.Requirement;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ScanClockTest {
  private static final int LONGEST = Parameter.SCAN_MAXIMUM.standard();
  private final ScanClock clock = new ScanClock(DeviceProfile.sixLitre());

  @ParameterizedTest(name = "from {0}")
  @ValueSource(ints = {0, 7, Integer.MAX_VALUE - 5, Integer.MIN_VALUE, -5, -1})
  @DisplayName("time passes evenly, also where the counter wraps or changes its sign")
  void wraps(int start) {
    clock.takeUp(start);
    assertEquals(0, clock.sense(start), "nothing is known before the first scan");
    for (int i = 1; i <= 5; i++) {
      assertEquals(10, clock.sense(start + 10 * i));
      assertFalse(clock.hasJumped() || clock.isStalled());
    }
  }

  @Test
  @Requirement("SR-14")
  @DisplayName("a step up to the longest is a late scan, a longer one is a jump")
  void jumpsAhead() {
    clock.takeUp(0);
    assertEquals(LONGEST, clock.sense(LONGEST));
    assertFalse(clock.hasJumped());
    int passed = clock.sense(2 * LONGEST + 1);
    assertTrue(clock.hasJumped());
    assertEquals(LONGEST, passed, "no more time passes than one step may last");
  }

  @ParameterizedTest(name = "step {0}")
  @ValueSource(ints = {-1, -10, Integer.MIN_VALUE, Integer.MAX_VALUE})
  @Requirement("SR-14")
  @DisplayName("a step backwards, however far, is a jump and never negative time")
  void jumpsBack(int step) {
    clock.takeUp(1_000);
    assertEquals(LONGEST, clock.sense(1_000 + step));
    assertTrue(clock.hasJumped());
    clock.sense(1_000 + step + 10);
    assertFalse(clock.hasJumped(), "a jump lasts one scan");
  }

  @Test
  @Requirement("SR-14")
  @DisplayName("a counter that stands still is stalled from the fifth scan on")
  void stalls() {
    clock.takeUp(100);
    clock.sense(110);
    for (int i = 1; i <= 4; i++) {
      clock.sense(110);
      assertFalse(clock.isStalled(), "after " + i);
    }
    clock.sense(110);
    assertTrue(clock.isStalled());
    clock.sense(120);
    assertFalse(clock.isStalled());
  }

  @Test
  @Requirement("SR-14")
  @DisplayName("a counter that stands from power-up is found as well")
  void stallsFromPowerUp() {
    for (int i = 0; i < 5; i++) {
      clock.sense(0);
    }
    assertTrue(clock.isStalled());
  }

  @Test
  @DisplayName("taken up anew, time counts from what stands on the counter, whatever came before")
  void takesUp() {
    clock.takeUp(100);
    clock.takeUp(5_000_000);
    assertEquals(10, clock.sense(5_000_010));
    assertFalse(clock.hasJumped());
  }

  @Test
  @Requirement("SR-14")
  @DisplayName("what was wrong before a state was captured is over with a good step after it")
  void wrongBefore() {
    clock.takeUp(0);
    clock.sense(-1);
    ScanClock jumped = carriedOn();
    assertEquals(10, jumped.sense(10));
    assertFalse(jumped.hasJumped());

    clock.takeUp(0);
    for (int i = 0; i < 4; i++) {
      clock.sense(0);
    }
    ScanClock stood = carriedOn();
    assertEquals(10, stood.sense(10));
    stood.sense(10);
    assertFalse(stood.isStalled(), "the first scan without a step since");
  }

  @Test
  @DisplayName("a step counts up to the longest; none, a longer one or one backwards is no step")
  void goodSteps() {
    int[] steps = {0, LONGEST, LONGEST + 1, -1};
    int[] counted = {0, LONGEST, LONGEST, LONGEST};
    for (int i = 0; i < steps.length; i++) {
      clock.takeUp(0);
      assertEquals(counted[i], clock.sense(steps[i]), "step " + steps[i]);
      assertEquals(i > 1, clock.hasJumped(), "step " + steps[i]);
    }
  }

  /** Another clock with the state of this one, whose counter stands at 0. */
  private ScanClock carriedOn() {
    StateWords state = new StateWords(2);
    state.beginCapture();
    clock.carry(state);
    state.beginRestore();
    ScanClock other = new ScanClock(DeviceProfile.sixLitre());
    other.carry(state);
    other.takeUp(0);
    return other;
  }
}
