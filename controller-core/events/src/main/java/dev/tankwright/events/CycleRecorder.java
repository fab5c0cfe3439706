package dev.tankwright.events;

import dev.tankwright.controller.board.Fault;
import dev.tankwright.controller.board.Phase;
import dev.tankwright.controller.sequence.CycleTally;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Makes the record of a cycle from the controller's tally, once the cycle has ended. */
final class CycleRecorder {
  private final EventOrigin origin;
  private final CycleTally tally;

  CycleRecorder(EventOrigin origin, CycleTally tally) {
    this.origin = origin;
    this.tally = tally;
  }

  CycleRecord record(
      Outcome outcome,
      Optional<Cause> cause,
      long endedMs,
      OpenCycle cycle,
      Optional<SolutionInUse> solution) {
    return new CycleRecord(
        origin.device(),
        origin.softwareVersion(),
        tally.number(),
        tally.programme(),
        outcome,
        cause,
        origin.at(tally.startedMs()),
        origin.at(endedMs),
        cycle.order(),
        solution.filter(SolutionInUse::isInTank),
        tally.setpointMilliC(),
        temperatures(),
        phaseMs(),
        tally.interruptions(),
        cycle.pauses(),
        tally.isDegassed(),
        tally.ultrasoundMs(),
        tally.heaterMs(),
        tally.energyMilliWattHours(),
        faults(tally),
        origin.simulated());
  }

  /** Faults latched during the cycle, in the order of their declaration. */
  static List<Fault> faults(CycleTally tally) {
    List<Fault> faults = new ArrayList<>();
    for (int i = 0; i < Fault.count(); i++) {
      if ((tally.faultBits() & Fault.of(i).bit()) != 0) {
        faults.add(Fault.of(i));
      }
    }
    return faults;
  }

  private Optional<CycleRecord.Temperatures> temperatures() {
    return tally.hasTemperatures()
        ? Optional.of(
            new CycleRecord.Temperatures(
                tally.minimumMilliC(), tally.meanMilliC(), tally.maximumMilliC()))
        : Optional.empty();
  }

  private Map<Phase, Long> phaseMs() {
    Map<Phase, Long> times = new EnumMap<>(Phase.class);
    for (int i = 0; i < Phase.count(); i++) {
      if (Phase.of(i).isInCycle()) {
        times.put(Phase.of(i), tally.phaseMs(Phase.of(i)));
      }
    }
    return times;
  }
}
