package dev.tankwright.controller.safety;

import dev.tankwright.controller.board.DeviceProfile;
import dev.tankwright.controller.board.Fault;
import dev.tankwright.controller.board.Parameter;
import dev.tankwright.controller.sensing.Channel;

/** A sensor circuit is shorted. */
final class SensorShortMonitor extends Monitor {
  private final Channel channel;

  SensorShortMonitor(Fault fault, Channel channel, DeviceProfile profile) {
    super(fault, profile.get(Parameter.SENSOR_FAULT_TIME));
    this.channel = channel;
  }

  @Override
  boolean holds(Watch w) {
    return channel.isShorted();
  }
}
