package dev.tankwright.scenario;

import dev.tankwright.loop.SignalSource;

/** Judges one requirement in one run. Not thread-safe. */
public interface RequirementWatch {
  /**
   * Looks at the signals of one step. Allocates nothing.
   *
   * @param millis ms since the start of the run, more than in the step before
   * @param source the signals as they are after the step
   */
  void step(long millis, SignalSource source);

  /**
   * What has become of the requirement. May be asked at any time, and again.
   *
   * @param endMillis when the run ended, ms since its start, at least the moment of the last step
   */
  Verdict verdict(long endMillis);
}
