package dev.tankwright.controller.safety;

import dev.tankwright.controller.board.DeviceProfile;
import dev.tankwright.controller.board.Fault;
import dev.tankwright.controller.board.Parameter;

/** Heating up lasts longer than it may. */
final class HeatUpTimeMonitor extends Monitor {
  HeatUpTimeMonitor(DeviceProfile profile) {
    super(Fault.HEAT_UP_TOO_LONG, profile.get(Parameter.HEAT_UP_MAXIMUM));
  }

  void scan(Watch w, FaultLatch latch) {
    watch(w.heatingUp, w.dtMs(), latch);
  }
}
