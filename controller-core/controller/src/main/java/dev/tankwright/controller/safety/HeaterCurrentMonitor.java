package dev.tankwright.controller.safety;

import dev.tankwright.controller.board.DeviceProfile;
import dev.tankwright.controller.board.Fault;
import dev.tankwright.controller.board.Parameter;

/** No current flows through a heater that is commanded on. */
final class HeaterCurrentMonitor extends Monitor {
  HeaterCurrentMonitor(DeviceProfile profile) {
    super(Fault.HEATER_WITHOUT_CURRENT, profile.get(Parameter.NO_CURRENT_TIME));
  }

  @Override
  boolean holds(Watch w) {
    return w.driven.heater()
        && !w.measured.isHeaterCurrent()
        && w.driven.cutOffRelay()
        && w.measured.isMains();
  }
}
