package dev.tankwright.timeline;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import dev.tankwright.controller.board.Fault;
import dev.tankwright.controller.board.Phase;
import dev.tankwright.loop.Signal;
import dev.tankwright.scenario.condition.Condition;
import java.util.Locale;
import java.util.regex.Pattern;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class SignalsTest {
  @ParameterizedTest
  @EnumSource(Signal.class)
  @DisplayName("every signal of scenario files has a method of its own name and kind")
  void everySignal(Signal signal) throws ReflectiveOperationException {
    Object found = Signals.class.getMethod(camel(signal.key())).invoke(null);
    Object wanted =
        switch (signal.quantity()) {
          case SWITCH -> new SwitchSignal(signal);
          case WORD -> new WordSignal(signal);
          default -> new NumberSignal(signal);
        };
    assertEquals(wanted, found);
  }

  /** For example {@code lidOpen} for {@code lid-open}. */
  private static String camel(String key) {
    return Pattern.compile("-([a-z])")
        .matcher(key)
        .replaceAll(letter -> letter.group(1).toUpperCase(Locale.ROOT));
  }

  @Test
  @DisplayName("conditions are those that a scenario file writes")
  void conditions() {
    assertEquals(Condition.of("not ultrasound"), Signals.ultrasound().off());
    assertEquals(Condition.of("phase = CLEANING"), Signals.phase().is(Phase.CLEANING));
    assertEquals(Condition.of("fault = NONE"), Signals.fault().none());
    assertEquals(
        Condition.of("liquid-temperature < 70.5 °C"), Signals.liquidTemperature().below(70.5));
    assertEquals(Condition.of("volume >= 4 L"), Signals.volume().atLeast(4));
    assertEquals(Condition.of("soil-left <= 0.1"), Signals.soilLeft().atMost(0.1));
  }

  @Test
  @DisplayName("a word that the signal does not know, and a limit that is no number, are refused")
  void refused() {
    assertThrows(IllegalArgumentException.class, () -> Signals.phase().is(Fault.LID_CONTRADICTION));
    assertThrows(IllegalArgumentException.class, () -> Signals.phase().none());
    assertThrows(IllegalArgumentException.class, () -> Signals.volume().below(Double.NaN));
  }
}
