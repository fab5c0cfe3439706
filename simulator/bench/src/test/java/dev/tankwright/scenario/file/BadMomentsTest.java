package dev.tankwright.scenario.file;

import static dev.tankwright.scenario.file.BadFile.change;

import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Names, references, crossings and repetitions that are wrong. */
class BadMomentsTest {
  static Stream<BadFile.Case> moments() {
    return Stream.of(
        change(
            "- on: CLEANING",
            "- when: lid-opn",
            "17:11: unknown signal 'lid-opn'; did you mean" + " 'lid-open'?"),
        change(
            "- on: CLEANING",
            "- on: CLEANING\n    from: nobody",
            "18:11: no entry before this one is named 'nobody'; known here: start"),
        change(
            "- at: 5 s",
            "- name: first\n    at: 5 s\n    from: start",
            "15:5: 'from' does not go with 'at', which waits for no entry; write 'later'"),
        change(
            "- on: CLEANING",
            "- name: start\n    on: CLEANING",
            "17:11: 'start' is the start of the run; give this entry another name"),
        change(
            "- on: CLEANING\n    after: 4 min\n    lid: open\n  - later: 1 s",
            "- on: CLEANING\n    name: A\n    lid: open\n  - later: 1 s\n    name: A",
            "21:11: the name 'A' is already taken in line 18; give each entry its own"),
        change(
            "- on: CLEANING",
            "- on: CLEANING\n    times: 3\n    until: 5 min",
            "18:5: 'times' goes only with 'every'; for example 'every: 2 min'",
            "19:5: 'until' goes only with 'every'; for example 'every: 2 min'"),
        change(
            "- on: CLEANING",
            "- on: CLEANING\n    every: 5 ms\n    times: 3",
            "18:12: every is 5 ms; it must lie from 10 ms to 24 h"),
        change(
            "- on: CLEANING",
            "- on: CLEANING\n    every: 5 s\n    times: 0",
            "19:12: times is '0'; it must be a whole number from 1 to 10000"),
        change(
            "- on: CLEANING",
            "- on: CLEANING\n    every: 100 ms\n    until: 5 min",
            "18:5: this would be done more than 10000 times; give it 'times', or more time"),
        change(
            "- on: CLEANING",
            "- on: CLEANING\n    every: 2 min",
            "21:5: this entry waits for the entry before it, which is repeated without end; give"
                + " that one 'times' or 'until', or wait for another with 'from'"),
        change(
            "- at: 5 s",
            "- at: 5 s\n    every: 1 min\n    until: 3 s",
            "15:12: until is 3 s; it must not come before 'at' of the same entry"),
        change(
            "- at: 5 s\n",
            "- at: 5 s\n    name: A\n    every: 1 min\n",
            "19:5: this entry waits for the entry before it, which is repeated without end; give"
                + " that one 'times' or 'until', or wait for another with 'from'"));
  }

  @ParameterizedTest
  @MethodSource("moments")
  void saysWhatIsWrongWhereAndWhatIsRight(BadFile.Case bad) {
    BadFile.check(bad);
  }
}
