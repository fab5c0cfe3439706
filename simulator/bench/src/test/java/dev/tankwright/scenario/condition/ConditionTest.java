package dev.tankwright.scenario.condition;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import dev.tankwright.loop.Signal;
import dev.tankwright.scenario.yaml.TextFault;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ConditionTest {
  private final Signals signals =
      new Signals()
          .set(Signal.LIQUID_TEMPERATURE, 60)
          .set(Signal.WALL_TEMPERATURE, 64)
          .set(Signal.VOLUME, 4.5)
          .set(Signal.HEATER, 1)
          .set(Signal.PHASE, "HEATING");

  /**
   * By hand, from the robust semantics of signal temporal logic: Donzé and Maler (2010), cited from
   * memory.
   */
  @ParameterizedTest
  @CsvSource({
    "liquid-temperature < 70 °C, true, 10",
    "liquid-temperature < 60 °C, false, 0",
    "liquid-temperature <= 60 °C, true, 0",
    "liquid-temperature > 70 °C, false, -10",
    "liquid-temperature >= 140 °F, true, 0",
    "not liquid-temperature < 70 °C, false, -10",
    "liquid-temperature < 70 °C and wall-temperature < 70 °C, true, 6",
    "liquid-temperature < 70 °C or wall-temperature < 70 °C, true, 10",
    "liquid-temperature < 50 °C or wall-temperature < 60 °C, false, -4",
    "not (liquid-temperature < 50 °C or wall-temperature < 60 °C), true, 4",
    "heater, true, Infinity",
    "ultrasound, false, -Infinity",
    "not heater or liquid-temperature < 70 °C, true, 10",
    "heater and liquid-temperature > 70 °C, false, -10",
    "phase = HEATING, true, Infinity",
    "phase != HEATING, false, -Infinity",
    "fault = NONE and volume < 5 L, true, 0.5"
  })
  void holdsAndMeasures(String text, boolean holds, double robustness) throws TextFault {
    Condition condition = ConditionParser.parse(text);
    assertEquals(holds, condition.holds(signals));
    assertEquals(robustness, condition.robustness(signals));
  }

  @Test
  void refusesToJudgeWhatIsNoNumber() throws TextFault {
    signals.set(Signal.VOLUME, Double.NaN);
    Condition condition = ConditionParser.parse("not volume < 5 L");
    IllegalStateException e =
        assertThrows(IllegalStateException.class, () -> condition.holds(signals));
    assertEquals("volume is not a number", e.getMessage());
    assertThrows(IllegalStateException.class, () -> condition.robustness(signals));
  }
}
