package dev.tankwright.scenario;

import static dev.tankwright.scenario.BadFile.change;

import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Quantities out of range and timeline entries that mean nothing. */
class BadTimelineTest {
  static Stream<BadFile.Case> quantities() {
    return Stream.of(
        change("fill: 4.5 L", "fill: 7 L", "8:9: fill is 7 L; it must lie from 0 L to 6 L"),
        change("fill: 4.5 L", "fill: 6001 mL", "8:9: fill is 6001 mL; it must lie from 0 L to 6 L"),
        change("fill: 4.5 L", "fill: -1 L", "8:9: fill is -1 L; it must lie from 0 L to 6 L"),
        change(
            "fill: 4.5 L",
            "fill: .inf",
            "8:9: fill is '.inf', which is no number; write a number of at most 15 digits, for"
                + " example 4.5 L"),
        change(
            "fill: 4.5 L",
            "fill: 1e999 L",
            "8:9: fill is '1e999 L'; write the number in digits, without exponent"),
        change(
            "fill: 4.5 L",
            "fill: 4.5 °C",
            "8:13: fill is '4.5 °C', a temperature; fill is a volume, in L or mL"),
        change(
            "fill: 4.5 L",
            "fill: \"4.5 litres\"",
            "8:14: fill has the unknown unit 'litres'; fill is a volume, in L or mL"),
        change(
            "  temperature: 19 °C",
            "  temperature: 300 °F",
            "9:16: temperature is 300 °F; it must lie from 1 °C to 95 °C"),
        change(
            "cut-off-limit: 70 °C",
            "cut-off-limit: 80 °C",
            "11:18: cut-off-limit is 80 °C; it must lie from 62 °C to 75 °C"),
        change(
            "cut-off-limit: 70 °C",
            "cut-off-limit: 155 °F",
            "11:18: cut-off-limit is 155 °F, which is not a whole multiple of 0.001 °C; the nearest"
                + " is 68.333 °C"),
        change(
            "cut-off-limit: 70 °C",
            "dead-band: 1 °C",
            "11:16: dead-band is '1 °C', a temperature; dead-band is a temperature difference, in"
                + " K"),
        change(
            "cut-off-limit: 70 °C",
            "dry-time: 1 s",
            "11:13: dry-time is 1 s; it must lie from 0 ms to 90 ms"),
        change(
            "cut-off-limit: 70 °C",
            "cleaning-level: 101 %",
            "11:19: cleaning-level is 101 %; it must lie from 10 % to 100 %"),
        change(
            "setpoint: 40 °C",
            "setpoint: 61 °C",
            "16:15: setpoint is 61 °C; it must lie from 21 °C to 60 °C"),
        change(
            "setpoint: 40 °C",
            "clean: 61 min",
            "16:12: clean is 61 min; it must lie from 1 ms to 60 min"),
        change(
            "fill: 1 L\n", "fill: 0 L\n", "21:11: fill is 0 L; it must lie from 0.001 L to 6 L"));
  }

  static Stream<BadFile.Case> timeline() {
    return Stream.of(
        change("- at: 5 s", "- at: -5 s", "13:9: at is -5 s; it must lie from 0 ms to 24 h"),
        change(
            "- at: 5 s",
            "- then: 5 s",
            "13:5: 'then' has no entry before it to wait for; write 'at' in the first entry"),
        change(
            "- at: 5 s\n    command",
            "- at: 5 s\n    after: 1 s\n    command",
            "14:5: 'after' goes only with 'on'; for a time after the entry before write 'then'"),
        change(
            "- at: 5 s",
            "- at: 5 s\n    on: HEATING",
            "14:5: an entry has one moment, this one has at and on"),
        change(
            "- on: CLEANING\n    after: 4 min\n    lid: open\n",
            "- lid: open\n",
            "17:5: this entry has no moment; give it one of at, on, then"),
        change(
            "- on: CLEANING\n",
            "- on: cleaning\n",
            "17:9: on cannot be 'cleaning'; did you mean 'CLEANING'?"),
        change(
            "- on: CLEANING\n    after: 4 min\n    lid: open\n",
            "-\n",
            "17:4: a timeline entry needs a moment and a deed, as in 'at: 5 s' and 'lid: open';"
                + " here is nothing"),
        change(
            "    lid: open\n",
            "",
            "17:5: this entry does nothing; give it one of command, lid, break, mend, fill, basket,"
                + " foil"),
        change(
            "    lid: open\n",
            "    lid: open\n    mend: drain-leaking\n",
            "20:5: an entry does one thing, this one has lid and mend; make it several"),
        change(
            "lid: open\n", "lid: opened\n", "19:10: lid cannot be 'opened'; did you mean 'open'?"),
        change(
            "command: START",
            "command: STRAT",
            "14:14: command cannot be 'STRAT'; did you mean 'START'?"),
        change(
            "command: START",
            "command: NONE",
            "14:14: command cannot be 'NONE'; known here: START, PAUSE, RESUME, STOP, ACKNOWLEDGE,"
                + " DRAIN, FRESH_SOLUTION, RESET"),
        change(
            "    programme: MEDIUM\n",
            "",
            "13:5: this timeline entry lacks the key 'programme'; for example 'programme: MEDIUM'"),
        change(
            "programme: MEDIUM",
            "programme: MEDUIM",
            "15:16: programme cannot be 'MEDUIM'; did you mean 'MEDIUM'?"),
        change(
            "programme: MEDIUM",
            "programme: DEGAS_ONLY\n    clean: 5 min",
            "16:5: 'clean' does not go with DEGAS_ONLY, which only degasses; leave it out"),
        change(
            "command: START\n    programme: MEDIUM",
            "command: STOP\n    programme: MEDIUM",
            "15:5: 'programme' goes only with 'command: START'",
            "16:5: 'setpoint' goes only with 'command: START'"),
        change(
            "    fill: 1 L\n    temperature: 20 °C\n",
            "    fill: 1 L\n",
            "20:5: this timeline entry lacks the key 'temperature'; for example 'temperature: 19"
                + " °C'"),
        change(
            "    lid: open\n",
            "    lid: open\n    temperature: 20 °C\n",
            "20:5: 'temperature' goes only with 'fill'"),
        change(
            "command: ACKNOWLEDGE",
            "command: RESUME",
            "25:5: 'foil' goes only with 'command: ACKNOWLEDGE'"),
        change(
            "foil: MARKED", "foil: MARKD", "25:11: foil cannot be 'MARKD'; did you mean 'MARKED'?"),
        change(
            "break: drain-leaking",
            "break: drain-leeking",
            "27:12: break cannot be 'drain-leeking'; did you mean 'drain-leaking'?"));
  }

  @ParameterizedTest
  @MethodSource({"quantities", "timeline"})
  void saysWhatIsWrongWhereAndWhatIsRight(BadFile.Case bad) {
    BadFile.check(bad);
  }
}
