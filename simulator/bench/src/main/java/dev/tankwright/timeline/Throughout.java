package dev.tankwright.timeline;

import dev.tankwright.scenario.condition.Condition;
import java.time.Duration;

/** A span of time in every step of which something is expected. */
public final class Throughout {
  private final Bench bench;
  private final Duration time;

  Throughout(Bench bench, Duration time) {
    this.bench = bench;
    this.time = time;
  }

  /** Lets the time pass; fails in the first step in which the condition does not hold. */
  public Bench expect(Condition condition) {
    bench.hold(condition, time);
    return bench;
  }

  /** The same with a condition as a scenario file writes it. */
  public Bench expect(String condition) {
    return expect(Condition.of(condition));
  }
}
