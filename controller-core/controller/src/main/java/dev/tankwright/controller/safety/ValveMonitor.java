package dev.tankwright.controller.safety;

import dev.tankwright.controller.board.DeviceProfile;
import dev.tankwright.controller.board.Fault;
import dev.tankwright.controller.board.Parameter;

/** The drain valve is not at the end to which it is driven. */
final class ValveMonitor extends Monitor {
  ValveMonitor(DeviceProfile profile) {
    super(Fault.VALVE_NOT_IN_PLACE, profile.get(Parameter.VALVE_TIME));
  }

  @Override
  boolean holds(Watch w) {
    boolean inPlace = w.driven.drain() ? w.measured.isDrainOpen() : w.measured.isDrainShut();
    return !inPlace && w.measured.isMains();
  }
}
