package dev.tankwright.events;

import dev.tankwright.controller.board.Phase;
import dev.tankwright.controller.board.Severity;
import java.util.ArrayList;
import java.util.List;

/** Judges a record by what was set and what was measured. */
final class Deviations {
  /**
   * How far below its setpoint a solution may be while it degasses or cleans, m°C: more than the
   * regulation's dead band and a basket's cooling. Ours, no source.
   */
  static final int COLDER_MILLI_K = 3_000;

  private Deviations() {}

  static List<Deviation> of(CycleRecord record) {
    List<Deviation> found = new ArrayList<>();
    if (record.outcome() != Outcome.COMPLETED) {
      found.add(Deviation.NOT_COMPLETED);
    }
    if (record.faults().stream().anyMatch(fault -> fault.severity() != Severity.ADVISORY)) {
      found.add(Deviation.FAULT);
    }
    if (isShort(record)) {
      found.add(Deviation.TIME_SHORT);
    }
    if (isCold(record)) {
      found.add(Deviation.TOO_COLD);
    }
    return List.copyOf(found);
  }

  private static boolean isShort(CycleRecord record) {
    long cleanedMs = record.phaseMs().getOrDefault(Phase.CLEANING, 0L);
    return record.order().recipe().filter(set -> cleanedMs < set.cleanMs()).isPresent();
  }

  private static boolean isCold(CycleRecord record) {
    int least = record.setpointMilliC() - COLDER_MILLI_K;
    return record.temperatures().filter(t -> t.minimumMilliC() < least).isPresent();
  }
}
