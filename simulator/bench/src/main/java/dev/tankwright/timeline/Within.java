package dev.tankwright.timeline;

import dev.tankwright.scenario.condition.Condition;
import java.time.Duration;

/** A time limit that waits for what is expected in it. */
public final class Within {
  private final Bench bench;
  private final Duration limit;

  Within(Bench bench, Duration limit) {
    this.bench = bench;
    this.limit = limit;
  }

  /** Waits until the condition holds; fails when the time is over before. */
  public Bench expect(Condition condition) {
    bench.await(
        condition,
        limit,
        "within " + Shows.span(limit) + " after " + bench.since() + ": " + condition);
    return bench;
  }

  /** The same with a condition as a scenario file writes it. */
  public Bench expect(String condition) {
    return expect(Condition.of(condition));
  }
}
