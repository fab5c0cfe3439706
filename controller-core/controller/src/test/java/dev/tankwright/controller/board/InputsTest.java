package dev.tankwright.controller.board;

import static dev.tankwright.trace.CountedAssertions.assertEquals;
import static dev.tankwright.trace.CountedAssertions.assertFalse;
import static dev.tankwright.trace.CountedAssertions.assertTrue;

import java.util.function.BiConsumer;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

class InputsTest {
  private static final int ALL = 0b11_1111_1111;

  static Stream<Arguments> contacts() {
    return Stream.of(
        contact(Pins.LID_MAKE, Inputs::lidMakeContact, Inputs::lidMakeContact),
        contact(Pins.LID_BREAK, Inputs::lidBreakContact, Inputs::lidBreakContact),
        contact(Pins.MINIMUM_WET, Inputs::minimumLevelWet, Inputs::minimumLevelWet),
        contact(Pins.FILL_MARK_WET, Inputs::fillMarkWet, Inputs::fillMarkWet),
        contact(Pins.DRAIN_OPEN, Inputs::drainOpenEnd, Inputs::drainOpenEnd),
        contact(Pins.DRAIN_CLOSED, Inputs::drainClosedEnd, Inputs::drainClosedEnd),
        contact(Pins.HEATER_CURRENT, Inputs::heaterCurrent, Inputs::heaterCurrent),
        contact(Pins.GENERATOR_RUNNING, Inputs::generatorRunning, Inputs::generatorRunning),
        contact(Pins.GENERATOR_FAULT, Inputs::generatorFault, Inputs::generatorFault),
        contact(Pins.MAINS, Inputs::mainsPresent, Inputs::mainsPresent));
  }

  private static Arguments contact(
      int bit, BiConsumer<Inputs, Boolean> set, Predicate<Inputs> tells) {
    return Arguments.of(bit, set, tells);
  }

  @ParameterizedTest(name = "bit {0}")
  @MethodSource("contacts")
  @DisplayName("every contact has its own bit, is told, and touches no other")
  void ownBit(int bit, BiConsumer<Inputs, Boolean> set, Predicate<Inputs> tells) {
    Inputs inputs = new Inputs();
    assertFalse(tells.test(inputs));
    set.accept(inputs, true);
    assertEquals(bit, inputs.pins());
    assertTrue(tells.test(inputs));
    inputs.pins(ALL);
    set.accept(inputs, false);
    assertEquals(ALL & ~bit, inputs.pins());
    assertFalse(tells.test(inputs));
  }
}
