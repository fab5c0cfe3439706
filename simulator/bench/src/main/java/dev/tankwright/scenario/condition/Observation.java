package dev.tankwright.scenario.condition;

import dev.tankwright.loop.Signal;
import dev.tankwright.loop.SignalSource;
import dev.tankwright.scenario.quantity.Plain;
import java.util.EnumSet;
import java.util.Set;
import java.util.StringJoiner;

/** The signals of a condition as they were at a moment. Written over again and again in a run. */
public final class Observation {
  private final Signal[] signals;
  private final double[] values;
  private long millis;
  private boolean taken;

  public Observation(Condition condition) {
    Set<Signal> named = EnumSet.noneOf(Signal.class);
    condition.visit(named::add);
    signals = named.toArray(Signal[]::new);
    values = new double[signals.length];
  }

  public void take(long atMillis, SignalSource source) {
    taken = true;
    millis = atMillis;
    for (int i = 0; i < signals.length; i++) {
      values[i] = source.value(signals[i]);
    }
  }

  public boolean isTaken() {
    return taken;
  }

  public long millis() {
    return millis;
  }

  /** For example {@code at 3.02 s: liquid-temperature 40.2 °C, heater off}. */
  @Override
  public String toString() {
    StringJoiner text = new StringJoiner(", ", "at " + Plain.moment(millis) + ": ", "");
    for (int i = 0; i < signals.length; i++) {
      text.add(Plain.signal(signals[i], values[i]));
    }
    return text.toString();
  }
}
