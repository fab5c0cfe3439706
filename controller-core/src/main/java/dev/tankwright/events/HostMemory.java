package dev.tankwright.events;

import java.time.Duration;
import java.util.Optional;

/**
 * What the host of a controller knows beside it and keeps while the controller is without power: it
 * has to outlast the host's own restart where events are to go on without a break. Whoever stores
 * events durably stores it with each, so that neither can be newer than the other. Immutable.
 *
 * @param link number and chain value of the last event
 * @param cycle the cycle under way; empty outside a cycle
 * @param solution the solution declared last; empty before the first
 */
public record HostMemory(
    ChainLink link, Optional<OpenCycle> cycle, Optional<SolutionInUse> solution) {
  /** Nothing has happened yet. */
  public static final HostMemory NEW = at(ChainLink.START);

  /** Nothing is known but where the chain has come to. */
  public static HostMemory at(ChainLink link) {
    return new HostMemory(link, Optional.empty(), Optional.empty());
  }

  HostMemory with(ChainLink next) {
    return new HostMemory(next, cycle, solution);
  }

  HostMemory with(OpenCycle open) {
    return new HostMemory(link, Optional.of(open), solution);
  }

  HostMemory withoutCycle() {
    return new HostMemory(link, Optional.empty(), solution);
  }

  HostMemory with(SolutionInUse other) {
    return new HostMemory(link, cycle, Optional.of(other));
  }

  /** Moments and lengths stay true when the clock is set by so much. */
  HostMemory shifted(Duration by) {
    return new HostMemory(
        link, cycle.map(open -> open.shifted(by)), solution.map(known -> known.shifted(by)));
  }
}
