package dev.tankwright.bench.coverage;

import dev.tankwright.events.EventType;
import dev.tankwright.loop.Action;
import dev.tankwright.loop.Signal;
import dev.tankwright.loop.Trace;
import dev.tankwright.plant.PartFault;
import dev.tankwright.scenario.Scenario;
import dev.tankwright.scenario.TimelineEntry;
import java.math.BigDecimal;
import java.util.Arrays;
import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * What something that a timeline does brought about: the difference between the run and the same
 * run without it.
 *
 * @param signal the most telling of the signals that differ first
 * @param millis since when, ms of the run, to the second
 * @param faults faults that the controller latched more often with it, in the order of time
 */
record Effect(Signal signal, long millis, List<String> faults) {
  /** For example {@code heater-power since 92.5 s; HEATER_RELAY_WELDED}. */
  @Override
  public String toString() {
    String since = signal.key() + " since " + BigDecimal.valueOf(millis, 3).toPlainString() + " s";
    return faults.isEmpty() ? since : since + "; " + String.join(" ", faults);
  }

  /**
   * The effect, or nothing when the run is the same without it.
   *
   * @param ran the run of the scenario as it is
   */
  static Optional<Effect> of(Target target, Scenario scenario, Ran ran) {
    Ran other = Ran.of(without(target, scenario));
    List<String> faults = more(latched(ran), latched(other));
    return difference(ran.result().trace(), other.result().trace(), faults);
  }

  private static List<String> latched(Ran ran) {
    return ran.said(EventType.FAULT_RAISED, "fault");
  }

  /** What stands more often in the first list than in the other, each once. */
  private static List<String> more(List<String> one, List<String> other) {
    return one.stream()
        .distinct()
        .filter(word -> Collections.frequency(one, word) > Collections.frequency(other, word))
        .toList();
  }

  /** The entries stay where they are, so that those that wait for them come when they came. */
  private static Scenario without(Target target, Scenario scenario) {
    Action harmless = harmless(scenario);
    List<TimelineEntry> entries =
        scenario.timeline().stream()
            .map(entry -> with(entry, target.without(entry.action(), harmless)))
            .toList();
    // Nothing is required of this run.
    return scenario.withTimeline(entries).withRequirements(List.of());
  }

  private static TimelineEntry with(TimelineEntry entry, Action action) {
    return new TimelineEntry(
        entry.name(), entry.from(), entry.when(), entry.repeat(), action, entry.place());
  }

  /** A part is repaired that never breaks. */
  private static Action harmless(Scenario scenario) {
    Set<PartFault> whole = EnumSet.allOf(PartFault.class);
    for (TimelineEntry entry : scenario.timeline()) {
      if (entry.action() instanceof Action.Break broken) {
        whole.remove(broken.fault());
      }
    }
    return new Action.Repair(whole.iterator().next());
  }

  private static Optional<Effect> difference(Trace one, Trace other, List<String> faults) {
    int row = 0;
    int otherRow = 0;
    while (row < one.rows() && otherRow < other.rows()) {
      int order = Long.compare(one.millis(row), other.millis(otherRow));
      if (order == 0) {
        Optional<Signal> signal = telling(one, row, other, otherRow);
        if (signal.isPresent()) {
          return Optional.of(new Effect(signal.get(), one.millis(row), faults));
        }
      }
      row += order <= 0 ? 1 : 0;
      otherRow += order >= 0 ? 1 : 0;
    }
    return Optional.empty();
  }

  /** Words tell most, and stand last. That a part is broken is no effect. */
  private static Optional<Signal> telling(Trace one, int row, Trace other, int otherRow) {
    return Arrays.stream(Signal.values())
        .filter(signal -> signal != Signal.PART_BROKEN)
        .filter(s -> Double.compare(one.value(row, s), other.value(otherRow, s)) != 0)
        .reduce((earlier, later) -> later);
  }
}
