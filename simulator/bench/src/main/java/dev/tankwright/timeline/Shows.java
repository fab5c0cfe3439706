package dev.tankwright.timeline;

import dev.tankwright.loop.Action;
import dev.tankwright.loop.Signal;
import dev.tankwright.scenario.TimelineEntry;
import dev.tankwright.scenario.Verdict;
import dev.tankwright.scenario.When;
import dev.tankwright.scenario.condition.Condition;
import dev.tankwright.scenario.quantity.Plain;
import dev.tankwright.scenario.yaml.Place;
import java.time.Duration;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.StringJoiner;

/** Actions, spans and values in words. */
final class Shows {
  private Shows() {}

  static String text(Action action) {
    return new TimelineEntry(new When.At(0), action, Place.START).text();
  }

  static String span(Duration time) {
    return Plain.duration(time.toMillis());
  }

  /** The values of a condition's signals in the last step. */
  static String now(LiveRun run, Condition condition) {
    Set<Signal> named = EnumSet.noneOf(Signal.class);
    condition.visit(named::add);
    StringJoiner values = new StringJoiner(", ");
    named.forEach(signal -> values.add(Plain.signal(signal, run.value(signal))));
    return values + " at " + Plain.moment(run.millis());
  }

  static List<String> notHeld(List<Verdict> verdicts) {
    return verdicts.stream()
        .filter(verdict -> verdict.outcome() != Verdict.Outcome.HELD)
        .map(Shows::line)
        .toList();
  }

  private static String line(Verdict verdict) {
    String outcome = verdict.outcome().name().replace('_', ' ');
    return outcome + ": " + verdict.name() + " (" + verdict.statement() + "): " + verdict.detail();
  }
}
