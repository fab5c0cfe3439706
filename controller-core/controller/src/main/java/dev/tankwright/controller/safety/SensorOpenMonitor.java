package dev.tankwright.controller.safety;

import dev.tankwright.controller.board.DeviceProfile;
import dev.tankwright.controller.board.Fault;
import dev.tankwright.controller.board.Parameter;
import dev.tankwright.controller.sensing.Channel;

/** A sensor circuit is open. */
final class SensorOpenMonitor extends Monitor {
  private final Channel channel;

  SensorOpenMonitor(Fault fault, Channel channel, DeviceProfile profile) {
    super(fault, profile.get(Parameter.SENSOR_FAULT_TIME));
    this.channel = channel;
  }

  @Override
  boolean holds(Watch w) {
    return channel.isOpen();
  }
}
