package dev.tankwright.controller.safety;

import dev.tankwright.controller.drive.Demand;
import dev.tankwright.controller.drive.Wanted;
import dev.tankwright.controller.sensing.Measurements;

/** What the monitors look at. */
final class Watch {
  private static final int NONE = -1;

  final Measurements measured;
  final Demand demand;
  final Wanted wanted;
  final Driven driven;
  private int lastDriven = NONE;

  Watch(Measurements measured, Demand demand, Wanted wanted, Driven driven) {
    this.measured = measured;
    this.demand = demand;
    this.wanted = wanted;
    this.driven = driven;
  }

  int dtMs() {
    return measured.dtMs();
  }

  /**
   * True when anything differs from the scan before on which a condition can depend that keeps no
   * time: a pin, a reading, a drive, or what is asked for. Takes note of it.
   */
  boolean takeNews() {
    if (driven.word() == lastDriven && !measured.hasChanged()) {
      return false;
    }
    lastDriven = driven.word();
    return true;
  }

  /** Everything is news in the next scan. */
  void forget() {
    lastDriven = NONE;
  }
}
