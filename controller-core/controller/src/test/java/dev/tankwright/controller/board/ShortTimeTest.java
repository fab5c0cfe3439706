package dev.tankwright.controller.board;

import static dev.tankwright.trace.CountedAssertions.assertEquals;
import static dev.tankwright.trace.CountedAssertions.assertFalse;
import static dev.tankwright.trace.CountedAssertions.assertThrows;
import static dev.tankwright.trace.CountedAssertions.assertTrue;

import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Profiles whose times are shortened so that every state can be visited. */
class ShortTimeTest {
  private final DeviceProfile usual = DeviceProfile.sixLitre();
  private final DeviceProfile quick = usual.withShortTime();

  @ParameterizedTest
  @EnumSource(Parameter.class)
  @DisplayName("only the lower end of times is lifted, and only where it was asked for")
  void onlyTimes(Parameter parameter) {
    boolean time = parameter.unit() == Unit.MILLISECONDS;
    int least = time ? Math.min(1, parameter.minimum()) : parameter.minimum();
    assertEquals(least, parameter.shortMinimum());
    // A number that goes with the others, whatever the order in which they are set.
    if (parameter != Parameter.CUT_OFF_LIMIT) {
      assertEquals(least, quick.with(parameter, least).get(parameter));
    }
    assertThrows(IllegalArgumentException.class, () -> quick.with(parameter, least - 1));
    int below = parameter.minimum() - 1;
    assertThrows(IllegalArgumentException.class, () -> usual.with(parameter, below));
    assertTrue(quick.with(parameter, usual.get(parameter)).isShortTime());
    assertFalse(usual.isShortTime());
    assertEquals(500, usual.beepMs(500));
    assertEquals(1, quick.beepMs(500));
  }
}
