package dev.tankwright.scenario.condition;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import dev.tankwright.scenario.yaml.TextFault;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class ConditionParserTest {

  @ParameterizedTest
  @ValueSource(
      strings = {
        "heater",
        "not heater",
        "not not heater",
        "phase = CLEANING",
        "phase != LOCKOUT",
        "liquid-temperature < 70 °C",
        "liquid-temperature >= 122 °F",
        "dissolved-gas <= 95 %",
        "dissolved-gas <= 0.95",
        "dissolved-gas < 0.95 and heater",
        "remaining-time > 90 s",
        "heater and ultrasound or buzzer",
        "heater and (ultrasound or buzzer)",
        "heater and (ultrasound and buzzer)",
        "heater or (ultrasound or buzzer)",
        "not (heater or buzzer) and not liquid-temperature < 20 °C",
        "not (heater and phase = CLEANING)"
      })
  void writesAConditionAsItWasRead(String text) throws TextFault {
    assertEquals(text, ConditionParser.parse(text).toString());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "(heater) | heater",
        "((heater))and((buzzer)) | heater and buzzer",
        "heater or (ultrasound and buzzer) | heater or ultrasound and buzzer",
        "(heater or ultrasound) or buzzer | heater or ultrasound or buzzer",
        "liquid-temperature<70°C | liquid-temperature < 70 °C",
        "not phase = CLEANING | phase != CLEANING",
        "not (phase != CLEANING) | not phase != CLEANING"
      })
  void dropsWhatIsNotNeeded(String text, String expected) throws TextFault {
    assertEquals(expected, ConditionParser.parse(text).toString());
  }

  @Test
  void readsBackWhatItWrites() throws TextFault {
    String text = "not (phase != CLEANING) or heater and not (buzzer or drive-level < 50 %)";
    Condition once = ConditionParser.parse(text);
    assertEquals(once, ConditionParser.parse(once.toString()));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '"',
      value = {
        "liquid-temprature < 70 °C | 0 | unknown signal 'liquid-temprature'; did you mean"
            + " 'liquid-temperature'?",
        "heater and CLEANING | 11 | 'CLEANING' is a word of phase; write 'phase = CLEANING'",
        "heater = 1 | 7 | heater is a switch and is not compared; write 'heater' or 'not heater'",
        "heater < 1 W | 7 | heater is a switch and is not compared; write 'heater' or 'not"
            + " heater'",
        "phase | 0 | phase is one of several words; write, for example, 'phase = LOCKOUT'",
        "phase < CLEANING | 6 | phase is a word and has no order; compare it with = or !=, as in"
            + " 'phase = LOCKOUT'",
        "phase = CLEANIG | 8 | phase cannot be 'CLEANIG'; did you mean 'CLEANING'?",
        "phase = 3 | 8 | phase cannot be '3'; known here: SELF_TEST, STANDBY, HEATING, DEGASSING,"
            + " CLEANING, PAUSED, COMPLETE, DRAINING, LOCKOUT",
        "fault = DRY_TNK | 8 | fault cannot be 'DRY_TNK'; did you mean 'DRY_TANK'?",
        "phase = | 6 | nothing follows on '='; a condition is like 'liquid-temperature < 70 °C',"
            + " 'not heater' or 'phase = CLEANING'",
        "liquid-temperature | 0 | liquid-temperature is a temperature, in °C or °F; compare it"
            + " with <, <=, > or >=",
        "volume = 4 L | 7 | volume is a volume and is never exactly one value; compare it with <,"
            + " <=, > or >=",
        "volume != 4 L | 7 | volume is a volume and is never exactly one value; compare it with <,"
            + " <=, > or >=",
        "volume < 4 °C | 11 | volume is '4 °C', a temperature; volume is a volume, in L or mL",
        "volume < 4 | 9 | volume is '4' without a unit; volume is a volume, in L or mL",
        "volume < NaN | 9 | volume is 'NaN', which is no number; write a number of at most 15"
            + " digits, for example 4.5 L",
        "volume < 1e999 L | 9 | volume is '1e999 L'; write the number in digits, without exponent",
        "heater == 1 | 7 | write '=' for '=='",
        "heater && buzzer | 7 | write 'and' for '&&'",
        "heater AND buzzer | 7 | write 'and' for 'AND'",
        "!heater | 0 | write 'not' for '!'",
        "heater or | 9 | a signal is wanted here, not the end; a condition is like"
            + " 'liquid-temperature < 70 °C', 'not heater' or 'phase = CLEANING'",
        "and heater | 0 | a signal is wanted here, not 'and'; a condition is like"
            + " 'liquid-temperature < 70 °C', 'not heater' or 'phase = CLEANING'",
        "(heater or buzzer | 0 | this parenthesis is not closed; add ')'",
        "heater) | 6 | this parenthesis closes none; join conditions with 'and' or 'or'",
        "heater buzzer | 7 | 'buzzer' does not follow on what stands before; join conditions with"
            + " 'and' or 'or'",
        "heater ; buzzer | 7 | ';' has no meaning in a condition; a condition is like"
            + " 'liquid-temperature < 70 °C', 'not heater' or 'phase = CLEANING'"
      })
  void saysWhatIsWrongAndWhere(String text, int offset, String message) {
    TextFault fault = assertThrows(TextFault.class, () -> ConditionParser.parse(text));
    assertEquals(message, fault.getMessage());
    assertEquals(offset, fault.offset());
  }

  @ParameterizedTest
  @CsvSource({"'(',100", "'not ',100", "'heater and ',50"})
  void boundsNestingAndLength(String piece, int times) {
    String text = piece.repeat(times) + "heater";
    TextFault fault = assertThrows(TextFault.class, () -> ConditionParser.parse(text));
    assertEquals(
        piece.startsWith("heater")
            ? "more than 40 signals; make it several"
            : "nested deeper than 20 levels; simplify it",
        fault.getMessage());
  }

  @Test
  void boundsTheText() {
    String text = "heater and ".repeat(1000) + "heater";
    TextFault fault = assertThrows(TextFault.class, () -> ConditionParser.parse(text));
    assertEquals(
        "this condition is longer than 1000 characters; make it several", fault.getMessage());
  }

  @Test
  void knowsTheMeasureOfItsComparisons() throws TextFault {
    assertEquals(
        Optional.of("K"), ConditionParser.parse("heater or liquid-temperature < 70 °C").measure());
    assertEquals(
        Optional.of(""), ConditionParser.parse("activity < 0.5 or drive-level < 50 %").measure());
    assertEquals(Optional.empty(), ConditionParser.parse("heater and phase = CLEANING").measure());
    assertEquals(
        Optional.empty(),
        ConditionParser.parse("volume < 2 L or liquid-temperature < 70 °C").measure());
  }
}
