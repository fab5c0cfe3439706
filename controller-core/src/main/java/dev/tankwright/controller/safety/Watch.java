package dev.tankwright.controller.safety;

import dev.tankwright.controller.board.Inputs;
import dev.tankwright.controller.drive.Wanted;
import dev.tankwright.controller.sensing.Measurements;

/** What the monitors look at in one scan. A struct. */
final class Watch {
  final Measurements measured;
  final Wanted wanted;
  final Driven driven;
  Inputs inputs;

  /** Temperature that the sequence asks to hold, m°C; 0 for none. */
  int setpointMilliC;

  /** True while the sequence waits for the setpoint to be reached. */
  boolean heatingUp;

  Watch(Measurements measured, Wanted wanted, Driven driven) {
    this.measured = measured;
    this.wanted = wanted;
    this.driven = driven;
  }

  int dtMs() {
    return measured.dtMs();
  }
}
