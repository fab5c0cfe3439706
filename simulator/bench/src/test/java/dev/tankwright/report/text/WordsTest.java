package dev.tankwright.report.text;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.tankwright.controller.board.Parameter;
import dev.tankwright.controller.board.Phase;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class WordsTest {

  @ParameterizedTest
  @CsvSource({
    "0, 0:00",
    "9000, 0:09",
    "2292000, 38:12",
    "2292120, 38:12.12",
    "2292100, 38:12.1",
    "10, 0:00.01",
    "1, 0:00.001",
    "86400000, 1440:00",
    "-1500, -0:01.5"
  })
  void saysMomentsInMinutesAndSeconds(long millis, String text) {
    assertEquals(text, Words.moment(millis));
  }

  @ParameterizedTest
  @CsvSource({
    "31.34, K, 31.3 K",
    "-1.234, K, -1.23 K",
    "0.0123, L, 0.012 L",
    "240.4, s, 240 s",
    "0.01, s, 10 ms",
    "20, ms, 20 ms",
    "12500, ms, 12.5 s",
    "0.112, '', 0.112",
    "-Infinity, s, -inf",
    "Infinity, K, inf",
    "NaN, K, unknown"
  })
  void saysMarginsWithTheirUnit(double margin, String unit, String text) {
    assertEquals(text, Words.margin(margin, unit));
  }

  @Test
  void saysNamesAsPeopleReadThem() {
    assertEquals("Self test", Words.of(Phase.SELF_TEST));
    assertEquals("", Words.sentence(""));
    assertEquals("Held at celsius", ReadableName.spaced("heldAtCelsius"));
  }

  @Test
  void saysParametersInTheUnitsOfPeople() {
    assertEquals("70\u00A0\u00B0C", ParameterText.of(Parameter.CUT_OFF_LIMIT, 70_000));
    assertEquals("68.5\u00A0\u00B0C", ParameterText.of(Parameter.CUT_OFF_LIMIT, 68_500));
    assertEquals("0.3\u00A0K", ParameterText.of(Parameter.HYSTERESIS, 300));
    assertEquals("50\u00A0ms", ParameterText.of(Parameter.DRY_TIME, 50));
    assertEquals("1.5\u00A0s", ParameterText.of(Parameter.PULSE_ON, 1_500));
    assertEquals("90\u00A0min", ParameterText.of(Parameter.HEAT_UP_MAXIMUM, 5_400_000));
    assertEquals("90\u00A0s", ParameterText.of(Parameter.DRAIN_TAIL, 90_000));
    assertEquals("40\u00A0kHz", ParameterText.of(Parameter.DRIVE_FREQUENCY, 40_000));
    assertEquals("45.5\u00A0%", ParameterText.of(Parameter.CLEANING_LEVEL, 455));
    assertEquals("1385.055\u00A0\u03A9", ParameterText.of(Parameter.SENSOR_RANGE_HIGH, 1_385_055));
    assertEquals("0", ParameterText.of(Parameter.CONTROL_MODE, 0));
  }
}
