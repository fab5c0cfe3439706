package dev.tankwright.controller.safety;

import dev.tankwright.controller.drive.Demand;
import dev.tankwright.controller.drive.Wanted;
import dev.tankwright.controller.sensing.Channel;
import dev.tankwright.controller.sensing.Measurements;

/** What the monitors look at. A struct. */
final class Watch {
  final Measurements measured;

  /** The sensor that regulation uses. */
  final Channel control;

  /** The second, independent sensor. */
  final Channel cutOff;

  final Demand demand;
  final Wanted wanted;

  /** What the scan before drove. */
  final Driven driven;

  Watch(Measurements measured, Demand demand, Wanted wanted, Driven driven) {
    this.measured = measured;
    this.control = measured.control();
    this.cutOff = measured.cutOff();
    this.demand = demand;
    this.wanted = wanted;
    this.driven = driven;
  }

  int dtMs() {
    return measured.dtMs();
  }
}
