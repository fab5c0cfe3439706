package dev.tankwright.controller.safety;

import dev.tankwright.controller.board.DeviceProfile;
import dev.tankwright.controller.board.Fault;
import dev.tankwright.controller.board.Parameter;
import dev.tankwright.controller.sensing.Channel;

/** A sensor circuit is shorted. */
final class SensorShortMonitor extends Monitor {
  SensorShortMonitor(Fault fault, DeviceProfile profile) {
    super(fault, profile.get(Parameter.SENSOR_FAULT_TIME));
  }

  void scan(Channel channel, Watch w, FaultLatch latch) {
    watch(channel.isShorted(), w.dtMs(), latch);
  }
}
