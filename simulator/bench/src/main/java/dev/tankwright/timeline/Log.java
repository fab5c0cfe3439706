package dev.tankwright.timeline;

import dev.tankwright.loop.Signal;
import dev.tankwright.loop.SignalSource;
import dev.tankwright.scenario.quantity.Plain;
import java.util.ArrayList;
import java.util.List;

/** What was done and what the controller made of it, for a person. One thread. */
final class Log {
  private static final List<Signal> WATCHED =
      List.of(Signal.PHASE, Signal.FAULT, Signal.REFUSAL, Signal.BOARD_SUPPLIED);

  private final List<String> lines = new ArrayList<>();
  private final double[] last = new double[WATCHED.size()];
  private boolean begun;

  void action(long millis, String text) {
    add(millis, text);
  }

  /** Notes what has changed since the step before. */
  void step(long millis, SignalSource source) {
    for (int i = 0; i < last.length; i++) {
      double now = source.value(WATCHED.get(i));
      if (now != last[i] || !begun) {
        boolean telling = begun || WATCHED.get(i) == Signal.PHASE;
        last[i] = now;
        if (telling) {
          add(millis, "  " + Plain.signal(WATCHED.get(i), now));
        }
      }
    }
    begun = true;
  }

  private void add(long millis, String text) {
    lines.add(String.format("%-16s %s", Plain.moment(millis), text));
  }

  /** All lines in the order of time; what the controller did is indented. */
  List<String> lines() {
    return List.copyOf(lines);
  }
}
