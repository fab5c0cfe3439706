package dev.tankwright.scenario.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import dev.tankwright.scenario.yaml.TextFault;
import java.util.OptionalLong;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Conversions are held against their definitions: 1 L = 1000 mL, 1 min = 60 s and 1 h = 3600 s (SI
 * brochure, table 8), t/°C = (t/°F - 32) / 1.8 (NIST SP 811); both cited from memory.
 */
class AmountParserTest {

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "TEMPERATURE | 122 °F  | 50",
        "TEMPERATURE | 32°F    | 0",
        "TEMPERATURE | 212 degF | 100",
        "TEMPERATURE | -40 °F  | -40",
        "TEMPERATURE | 50 °C   | 50",
        "TEMPERATURE | 19.25degC | 19.25",
        "DIFFERENCE  | 2 K     | 2",
        "VOLUME      | 4.5 L   | 4.5",
        "VOLUME      | 500 mL  | 0.5",
        "TIME        | 20 ms   | 0.02",
        "TIME        | 90 s    | 90",
        "TIME        | 70 min  | 4200",
        "TIME        | 2 h     | 7200",
        "FRACTION    | 100 %   | 1",
        "FRACTION    | 0.95    | 0.95",
        "POWER       | 300 W   | 300",
        "FREQUENCY   | 40 kHz  | 40000",
        "FREQUENCY   | 40.5 kHz | 40500",
        "RESISTANCE  | 1000 ohm | 1000",
        "RESISTANCE  | 1000 Ω  | 1000",
        "NUMBER      | 5       | 5"
      })
  void convertsExactly(Dimension dimension, String text, double expected) throws TextFault {
    assertEquals(expected, AmountParser.parse(text, dimension, "x").value());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "TEMPERATURE | 122 °F | 1000 | 50000",
        "TEMPERATURE | 155.3 °F | 1000 | 68500",
        "TIME | 0.02 s | 1000 | 20",
        "TIME | 1.5 min | 1000 | 90000",
        "VOLUME | 1 mL | 1000 | 1",
        "FRACTION | 12.3 % | 1000 | 123"
      })
  void givesWholeThousandths(Dimension dimension, String text, int perUnit, long expected)
      throws TextFault {
    assertEquals(
        OptionalLong.of(expected), AmountParser.parse(text, dimension, "x").whole(perUnit));
  }

  @Test
  void refusesToRoundAndNamesTheNearest() throws TextFault {
    // (155 - 32) / 1.8 = 68.3333…
    Amount amount = AmountParser.parse("155 °F", Dimension.TEMPERATURE, "x");
    assertEquals(OptionalLong.empty(), amount.whole(1000));
    assertEquals("68.333 °C", amount.nearest(1000));
    Amount micro = AmountParser.parse("0.5 ms", Dimension.TIME, "x");
    assertEquals(OptionalLong.empty(), micro.whole(1000));
    assertEquals("0 s", micro.nearest(1000));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "VOLUME | 4.5 | 0 | x is '4.5' without a unit; x is a volume, in L or mL",
        "VOLUME | 4.5 °C | 4 | x is '4.5 °C', a temperature; x is a volume, in L or mL",
        "VOLUME | 4.5 l | 4 | x has the unknown unit 'l' (did you mean L?); x is a volume, in L or"
            + " mL",
        "VOLUME | 4,5 L | 0 | x is '4,5 L', which is no number; write the decimals after a point,"
            + " for example 4.5 L",
        "VOLUME | .5 L | 0 | x is '.5 L', which is no number; write a number of at most 15 digits,"
            + " for example 4.5 L",
        "VOLUME | NaN | 0 | x is 'NaN', which is no number; write a number of at most 15 digits,"
            + " for example 4.5 L",
        "VOLUME | inf L | 0 | x is 'inf L', which is no number; write a number of at most 15"
            + " digits, for example 4.5 L",
        "VOLUME | 1e999 L | 0 | x is '1e999 L'; write the number in digits, without exponent",
        "VOLUME | 1234567890123456 L | 0 | x is '1234567890123456 L', which is no number; write a"
            + " number of at most 15 digits, for example 4.5 L",
        "VOLUME | 4.5  L | 4 | x has the unknown unit ' L' (did you mean L?); x is a volume, in L"
            + " or mL",
        "TEMPERATURE | 2 K | 2 | x is '2 K', a temperature difference; x is a temperature, in °C"
            + " or °F",
        "TEMPERATURE | 20 C | 3 | x has the unknown unit 'C' (did you mean °C?); x is a"
            + " temperature, in °C or °F",
        "TEMPERATURE | 20 ºC | 3 | x has the unknown unit 'ºC' (did you mean °C?); x is a"
            + " temperature, in °C or °F",
        "DIFFERENCE | 2 °C | 2 | x is '2 °C', a temperature; x is a temperature difference, in K",
        "TIME | 5 sec | 2 | x has the unknown unit 'sec'; x is a time, in ms, s, min or h",
        "NUMBER | 5 s | 2 | x is '5 s', a time; x is a plain number without a unit",
        "FRACTION | 5 L | 2 | x is '5 L', a volume; x is a fraction, in % or as a plain fraction of"
            + " 1"
      })
  void saysWhatIsWrong(Dimension dimension, String text, int offset, String message) {
    TextFault fault = assertThrows(TextFault.class, () -> AmountParser.parse(text, dimension, "x"));
    assertEquals(message, fault.getMessage());
    assertEquals(offset, fault.offset());
  }
}
