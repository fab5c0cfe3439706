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
   * time: a pin, a reading, a drive, or what is asked for.
   */
  boolean hasNews() {
    return measured.hasChanged() || hasDrivenNews();
  }

  /** True when a drive, or what is asked for, differs from what was looked at last. */
  boolean hasDrivenNews() {
    return driven.word() != lastDriven;
  }

  /** What was news is looked at now. */
  void takeNews() {
    lastDriven = driven.word();
  }

  /** Everything is news in the next scan. */
  void forget() {
    lastDriven = NONE;
  }
}
