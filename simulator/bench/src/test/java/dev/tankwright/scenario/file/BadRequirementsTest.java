package dev.tankwright.scenario.file;

import static dev.tankwright.scenario.file.BadFile.change;

import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Requirements and conditions that cannot be judged. */
class BadRequirementsTest {
  static Stream<BadFile.Case> requirements() {
    return Stream.of(
        change(
            "id: SR-01",
            "id: SR-1",
            "30:9: id is 'SR-1'; it must be SR- and two digits, for example SR-01"),
        change(
            "id: SR-01",
            "id: sr-01",
            "30:9: id is 'sr-01'; it must be SR- and two digits, for example SR-01"),
        change(
            "- name: Two",
            "- name: One",
            "34:5: the name 'One' is already taken in line 29; give each requirement its own"),
        change(
            "- name: Three\n    always",
            "- always",
            "37:5: this requirement lacks the key 'name'; for example 'name: The cycle completes'"),
        change(
            "    always: liquid-temperature < 70 °C\n",
            "",
            "37:5: this requirement asks for nothing; give it one of always, never, within,"
                + " eventually, stays, until, count"),
        change(
            "    always: liquid-temperature < 70 °C\n",
            "    always: heater\n    never: heater\n",
            "39:5: a requirement asks for one thing, this one has always and never"),
        change(
            "    always: liquid-temperature < 70 °C\n",
            "    always: heater\n    before: 1 s\n",
            "39:5: 'before' goes only with 'eventually'"),
        change(
            "    always: liquid-temperature < 70 °C\n",
            "    always: heater\n    holds: heater\n",
            "39:5: 'holds' goes only with 'within' or 'until'"),
        change(
            "    always: liquid-temperature < 70 °C\n",
            "    eventually: heater\n    while: lid-open\n",
            "39:5: 'while' goes only with 'always' or 'never'"),
        change(
            "    always: liquid-temperature < 70 °C\n",
            "    stays: heater\n",
            "37:5: this requirement lacks the key 'for'; for example 'for: 30 s'"),
        change(
            "    always: liquid-temperature < 70 °C\n",
            "    stays: heater\n    for: 0 s\n",
            "39:10: for is 0 s; it must lie from 1 ms to 60 min"),
        change(
            "    always: liquid-temperature < 70 °C\n",
            "    until: heater\n",
            "37:5: this requirement lacks the key 'holds'; for example 'holds: not ultrasound'"),
        change(
            "    always: liquid-temperature < 70 °C\n",
            "    count: heater\n",
            "38:5: 'count' lacks its bounds; give it 'at-least', 'at-most' or both, as in"
                + " 'at-most: 3'"),
        change(
            "    always: liquid-temperature < 70 °C\n",
            "    count: heater\n    at-least: 3\n    at-most: 2\n",
            "40:5: at-most is 2; it must be at least at-least, 3"),
        change(
            "    always: liquid-temperature < 70 °C\n",
            "    count: heater\n    at-most: -1\n",
            "39:14: at-most is '-1'; it must be a whole number from 0 to 9999999"),
        change(
            "before: 30 min",
            "before: 61 min",
            "36:13: before is 61 min; it must lie from 1 ms to 60 min"),
        change(
            "within: 20 ms",
            "within: 20 K",
            "31:16: within is '20 K', a temperature difference; within is a time, in ms, s, min or"
                + " h"),
        change(
            "always: liquid-temperature < 70 °C",
            "always: liquid-temperature < 70 L",
            "38:37: liquid-temperature is '70 L', a volume; liquid-temperature is a temperature,"
                + " in °C or °F"),
        change(
            "always: liquid-temperature < 70 °C",
            "always: \"heater and liquid-temprature < 70 °C\"",
            "38:25: unknown signal 'liquid-temprature'; did you mean 'liquid-temperature'?"),
        change(
            "always: liquid-temperature < 70 °C",
            "always: 'not ultrasound = true'",
            "38:29: ultrasound is a switch and is not compared; write 'ultrasound' or 'not"
                + " ultrasound'"),
        change(
            "always: liquid-temperature < 70 °C",
            "always: \"\\x68eater or haeter\"",
            "38:13: unknown signal 'haeter'; did you mean 'heater'?"),
        change(
            "always: liquid-temperature < 70 °C",
            "always: heater or\n      haeter",
            "38:13: unknown signal 'haeter'; did you mean 'heater'?"),
        change(
            "phase = COMPLETE",
            "phase = COMPLET",
            "35:25: phase cannot be 'COMPLET'; did you mean 'COMPLETE'?"),
        change(
            "phase = COMPLETE",
            "fault = SOMETHING_ELSE",
            "35:25: fault cannot be 'SOMETHING_ELSE'; the nearest of 30: NONE,"
                + " PROTEIN_MAY_SET, COMMAND_STUCK"),
        change(
            "  - name: Three\n    always: liquid-temperature < 70 °C\n",
            "  - nothing\n",
            "37:5: a requirement needs a name and one of always, never, within, eventually,"
                + " stays, until, count; here is a single value"));
  }

  @ParameterizedTest
  @MethodSource("requirements")
  void saysWhatIsWrongWhereAndWhatIsRight(BadFile.Case bad) {
    BadFile.check(bad);
  }
}
