package dev.tankwright.controller.safety;

import dev.tankwright.controller.board.DeviceProfile;
import dev.tankwright.controller.board.Fault;
import dev.tankwright.controller.board.Parameter;

/** Current flows through a heater that is commanded off. */
final class HeaterWeldedMonitor extends Monitor {
  HeaterWeldedMonitor(DeviceProfile profile) {
    super(Fault.HEATER_RELAY_WELDED, profile.get(Parameter.WELDED_TIME));
  }

  @Override
  boolean holds(Watch w) {
    return w.measured.isHeaterCurrent() && !w.driven.heater();
  }
}
