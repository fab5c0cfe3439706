package dev.tankwright.events;

import java.time.Duration;
import java.time.Instant;
import java.util.Optional;

/**
 * What the host knows of a solution since it was declared fresh. Immutable.
 *
 * @param lot lot of the chemistry, at most 128 characters; empty where it is not known
 * @param filled when it was declared
 * @param drained when it was drained; empty while it is in the tank
 * @param cycles how many cycles were started with it
 */
public record SolutionInUse(String lot, Instant filled, Optional<Instant> drained, int cycles) {
  /** Refuses a lot that cannot be sent. */
  public SolutionInUse {
    lot = Text.clean("the solution's lot", lot);
  }

  static SolutionInUse fresh(String lot, Instant filled) {
    return new SolutionInUse(lot, filled, Optional.empty(), 0);
  }

  boolean isInTank() {
    return drained.isEmpty();
  }

  SolutionInUse drainedAt(Instant moment) {
    return new SolutionInUse(lot, filled, Optional.of(drained.orElse(moment)), cycles);
  }

  SolutionInUse withCycle() {
    return new SolutionInUse(lot, filled, drained, cycles + 1);
  }

  SolutionInUse shifted(Duration by) {
    return new SolutionInUse(lot, filled.plus(by), drained.map(moment -> moment.plus(by)), cycles);
  }

  /** How old it is at a moment, or was when it was drained. */
  Duration age(Instant moment) {
    return Duration.between(filled, drained.orElse(moment));
  }
}
