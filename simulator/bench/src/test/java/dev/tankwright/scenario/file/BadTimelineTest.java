package dev.tankwright.scenario.file;

import static dev.tankwright.scenario.file.BadFile.change;

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
            "hysteresis: 1 °C",
            "11:17: hysteresis is '1 °C', a temperature; hysteresis is a temperature difference, in"
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
            "- later: 5 s",
            "13:5: 'later' has no entry before it to wait for; write 'at' in the first entry"),
        change(
            "- at: 5 s\n    command",
            "- at: 5 s\n    after: 1 s\n    command",
            "14:5: 'after' goes only with 'on' or 'when'; for a time after the entry before write"
                + " 'later'"),
        change(
            "- at: 5 s",
            "- at: 5 s\n    on: HEATING",
            "14:5: an entry has one moment, this one has at and on"),
        change(
            "- on: CLEANING\n    after: 4 min\n    lid: open\n",
            "- lid: open\n",
            "17:5: this entry has no moment; give it one of at, on, when, later"),
        change(
            "- on: CLEANING\n",
            "- on: cleaning\n",
            "17:9: on cannot be 'cleaning'; did you mean 'CLEANING'?"),
        change(
            "- on: CLEANING\n    after: 4 min\n    lid: open\n",
            "-\n",
            "17:4: a timeline entry needs a moment and an action, as in 'at: 5 s' and 'lid: open';"
                + " here is nothing"),
        change(
            "    lid: open\n",
            "",
            "17:5: this entry does nothing; give it one of command, lid, break, repair, fill,"
                + " basket, cut-power, set-clock, force, release, foil"),
        change(
            "    lid: open\n",
            "    set-clock: 0 s\n",
            "19:16: set-clock is 0; give how far the clock is set: -1 h back, 5 min ahead"),
        change(
            "    lid: open\n",
            "    set-clock: -25 h\n",
            "19:16: set-clock is -25 h; it must lie from -24 h to 24 h"),
        change(
            "    lid: open\n",
            "    lid: open\n    operator: op-7\n",
            "20:5: 'operator' goes only with 'command: START'"),
        change(
            "    lid: open\n",
            "    cut-power: 5 ms\n",
            "19:16: cut-power is 5 ms; it must lie from 10 ms to 24 h"),
        change(
            "    lid: open\n",
            "    cut-power: 3 s\n    for: 3 s\n",
            "20:5: 'for' goes only with 'break'"),
        change(
            "    lid: open\n",
            "    cut-power: 3 K\n",
            "19:18: cut-power is '3 K', a temperature difference; cut-power is a time, in ms, s,"
                + " min or h"),
        change(
            "    lid: open\n",
            "    lid: open\n    repair: drain-leaking\n",
            "20:5: an entry does one thing, this one has lid and repair; make it several"),
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

  static Stream<BadFile.Case> breaks() {
    return Stream.of(
        broken(
            "heater-partial\n    size: 100 %",
            "28:11: size of heater-partial is 100 %; it must lie from 1 % to 99 %"),
        broken(
            "heater-partial\n    size: 0",
            "28:11: size of heater-partial is 0; it must lie from 1 % to 99 %"),
        broken(
            "heater-partial\n    size: 100 W",
            "28:15: size of heater-partial is '100 W', a power; size of heater-partial is a"
                + " fraction, in % or as a plain fraction of 1"),
        broken(
            "heater-partial\n    size: .nan",
            "28:11: size of heater-partial is '.nan', which is no number; write a number of at most"
                + " 15 digits, for example 95 %"),
        broken(
            "control-sensor-drifting\n    size: 21 K/min",
            "28:11: size of control-sensor-drifting is 21 K/min; it must lie from -20 K/min to 20"
                + " K/min"),
        broken(
            "control-sensor-drifting\n    size: 0 K/h",
            "28:11: size of control-sensor-drifting is 0 K/h, which breaks nothing; give another"),
        broken(
            "control-sensor-drifting\n    size: 1 K",
            "28:13: size of control-sensor-drifting is '1 K', a temperature difference; size of"
                + " control-sensor-drifting is a drift, in K/min or K/h"),
        broken(
            "mains-brown-outs\n    size: 50 ms",
            "28:11: size of mains-brown-outs is 50 ms; it must lie from 100 ms to 10 min"),
        broken(
            "level-foamed\n    size: 4 L",
            "28:11: size of level-foamed is 4 L; it must lie from 0.05 L to 3 L"),
        broken(
            "converter-missing-codes\n    size: 2.5",
            "28:11: size of converter-missing-codes is 2.5, which is not a whole multiple of 1; the"
                + " nearest is 2"),
        broken(
            "drain-blocked\n    size: 50 %",
            "28:5: 'size' does not go with drain-blocked, which has none; leave it out"),
        broken(
            "drain-blocked\n    for: 5 ms", "28:10: for is 5 ms; it must lie from 10 ms to 24 h"),
        broken(
            "drain-blocked\n    for: -1 s", "28:10: for is -1 s; it must lie from 10 ms to 24 h"),
        broken(
            "memory-cut-short\n    size: 2.5",
            "28:11: size of memory-cut-short is 2.5, which is not a whole multiple of 1; the"
                + " nearest is 2"),
        broken(
            "memory-cut-short\n    size: 1001",
            "28:11: size of memory-cut-short is 1001; it must lie from 1 to 1000"),
        broken(
            "heater-partial\n    size: 0 %\n    for: 25 h",
            "28:11: size of heater-partial is 0 %; it must lie from 1 % to 99 %",
            "29:10: for is 25 h; it must lie from 10 ms to 24 h"),
        change(
            "- later: 1 s\n    break: drain-leaking",
            "- at: -1 ms\n    break: drain-leaking",
            "26:9: at is -1 ms; it must lie from 0 ms to 24 h"),
        change(
            "    lid: open\n",
            "    lid: open\n    size: 60 %\n    for: 5 s\n",
            "20:5: 'size' goes only with 'break'",
            "21:5: 'for' goes only with 'break'"),
        change(
            "break: drain-leaking",
            "repair: drain-leaking\n    for: 5 s",
            "28:5: 'for' goes only with 'break'"));
  }

  private static BadFile.Case broken(String part, String... problems) {
    return change("break: drain-leaking", "break: " + part, problems);
  }

  @ParameterizedTest
  @MethodSource({"quantities", "timeline", "breaks"})
  void saysWhatIsWrongWhereAndWhatIsRight(BadFile.Case bad) {
    BadFile.check(bad);
  }
}
