package dev.tankwright.controller.safety;

import dev.tankwright.controller.board.DeviceProfile;
import dev.tankwright.controller.board.Fault;
import dev.tankwright.controller.board.Parameter;

/** No current flows through a heater that is commanded on. */
final class HeaterCurrentMonitor extends Monitor {
  HeaterCurrentMonitor(DeviceProfile profile) {
    super(Fault.HEATER_WITHOUT_CURRENT, profile.get(Parameter.NO_CURRENT_TIME));
  }

  void scan(Watch w, FaultLatch latch) {
    boolean on = w.driven.heater && w.driven.cutOffRelay && w.inputs.mainsPresent;
    watch(on && !w.inputs.heaterCurrent, w.dtMs(), latch);
  }
}
