package dev.tankwright.timeline;

import dev.tankwright.loop.Signal;
import dev.tankwright.scenario.quantity.Plain;
import java.util.List;
import java.util.StringJoiner;

/** What a failed test shows: expected, actual, the last values, the time line, how to replay. */
final class Failure {
  private static final long[] AGO = {10_000, 1_000, 100, 10, 0};

  private final LiveRun run;

  Failure(LiveRun run) {
    this.run = run;
  }

  AssertionError of(Expectation expectation, Replays replays) {
    StringJoiner text = new StringJoiner(System.lineSeparator());
    text.add(expectation.title());
    text.add("  expected: " + expectation.expected());
    text.add("  actual:   " + expectation.actual());
    lastValues(text, expectation.signals());
    timeLine(text);
    replays.write(run, expectation).forEach(line -> text.add("  " + line));
    return new AssertionError(text.toString());
  }

  AssertionError of(List<String> verdicts, Replays replays) {
    StringJoiner text = new StringJoiner(System.lineSeparator());
    text.add("a requirement of the whole timeline was not shown");
    verdicts.forEach(verdict -> text.add("  " + verdict));
    lastValues(text, List.of(Signal.PHASE, Signal.FAULT, Signal.REFUSAL));
    timeLine(text);
    replays.write(run).forEach(line -> text.add("  " + line));
    return new AssertionError(text.toString());
  }

  private void lastValues(StringJoiner text, List<Signal> signals) {
    text.add("  last values:");
    for (long ago : AGO) {
      if (run.history().reaches(ago)) {
        StringJoiner values = new StringJoiner(", ");
        signals.forEach(s -> values.add(Plain.signal(s, run.history().value(s, ago))));
        text.add(String.format("    %-16s %s", Plain.moment(run.millis() - ago), values));
      }
    }
  }

  private void timeLine(StringJoiner text) {
    text.add("  time line:");
    run.log().lines().forEach(line -> text.add("    " + line));
  }
}
