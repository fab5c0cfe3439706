package dev.tankwright.events;

import java.time.Duration;
import java.util.Optional;

/**
 * What the host of a controller knows beside it and keeps while the controller is without power: it
 * has to outlast the host's own restart where events are to go on without a break. Whoever stores
 * events durably stores it with each, so that neither can be newer than the other; {@link
 * HostMemoryForm} is how it is written. Immutable.
 *
 * @param link number and chain value of the last event
 * @param cycles number of the last cycle that was started; 0 before the first
 * @param cycle the cycle under way; empty outside a cycle
 * @param solution the solution declared last; empty before the first
 */
public record HostMemory(
    ChainLink link, int cycles, Optional<OpenCycle> cycle, Optional<SolutionInUse> solution) {
  /** Nothing has happened yet. */
  public static final HostMemory NEW = at(ChainLink.START);

  /** Refuses a number that no cycle can have. */
  public HostMemory {
    if (cycles < 0) {
      throw new IllegalArgumentException(
          "the last cycle is number " + cycles + "; it must be 0 or more");
    }
  }

  /** Nothing is known but where the chain has come to. */
  public static HostMemory at(ChainLink link) {
    return new HostMemory(link, 0, Optional.empty(), Optional.empty());
  }

  HostMemory with(ChainLink next) {
    return new HostMemory(next, cycles, cycle, solution);
  }

  HostMemory with(OpenCycle open) {
    return new HostMemory(link, Math.max(cycles, open.number()), Optional.of(open), solution);
  }

  HostMemory withoutCycle() {
    return new HostMemory(link, cycles, Optional.empty(), solution);
  }

  HostMemory with(SolutionInUse other) {
    return new HostMemory(link, cycles, cycle, Optional.of(other));
  }

  /** Moments and lengths stay true when the clock is set by so much. */
  HostMemory shifted(Duration by) {
    return new HostMemory(
        link,
        cycles,
        cycle.map(open -> open.shifted(by)),
        solution.map(known -> known.shifted(by)));
  }
}
