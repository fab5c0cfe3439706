package dev.tankwright.scenario.condition;

import dev.tankwright.loop.Signal;
import dev.tankwright.loop.SignalSource;
import java.util.EnumMap;
import java.util.Map;

/** Signals that a test sets by hand; 0 unless set. */
public final class Signals implements SignalSource {
  private final Map<Signal, Double> values = new EnumMap<>(Signal.class);

  public Signals set(Signal signal, double value) {
    values.put(signal, value);
    return this;
  }

  public Signals set(Signal signal, String word) {
    return set(signal, signal.words().indexOf(word));
  }

  @Override
  public double value(Signal signal) {
    return values.getOrDefault(signal, 0.0);
  }
}
