package dev.tankwright.events;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;

/**
 * What the host knows of the cycle under way. Immutable.
 *
 * @param number number of the cycle
 * @param order what was asked of it
 * @param pauses its pauses in order, the first {@value #PAUSES} of them
 */
public record OpenCycle(int number, CycleOrder order, List<Pause> pauses) {
  /** How many pauses are kept: enough to read, and few enough for any event. */
  public static final int PAUSES = 32;

  /** Copies what could be changed from outside. */
  public OpenCycle {
    pauses = List.copyOf(pauses);
  }

  OpenCycle paused(Pause pause) {
    OpenCycle over = resumed(pause.at());
    if (pauses.size() >= PAUSES) {
      return over;
    }
    List<Pause> more = new ArrayList<>(over.pauses);
    more.add(pause);
    return new OpenCycle(number, order, more);
  }

  OpenCycle resumed(Instant moment) {
    return new OpenCycle(number, order, pauses.stream().map(p -> p.endedBy(moment)).toList());
  }

  OpenCycle shifted(Duration by) {
    return new OpenCycle(number, order, pauses.stream().map(p -> p.shifted(by)).toList());
  }
}
