package dev.tankwright.fleet;

import dev.tankwright.events.outbox.OutboxHealth;
import java.time.LocalDate;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/** Adds up how the devices of a fleet stand. */
final class FleetCount {
  private FleetCount() {}

  static FleetMoment of(LocalDate date, long dayMillis, List<FleetDevice> devices) {
    Map<DeviceState, Integer> states = new EnumMap<>(DeviceState.class);
    long committed = 0;
    long acknowledged = 0;
    long waiting = 0;
    for (FleetDevice device : devices) {
      OutboxHealth health = device.health();
      states.merge(device.state(), 1, Integer::sum);
      committed += health.committed() - device.committedBefore();
      acknowledged += health.acknowledged() - device.acknowledgedBefore();
      waiting += health.committed() - health.acknowledged() + health.waiting();
    }
    return new FleetMoment(
        date,
        dayMillis,
        states.getOrDefault(DeviceState.TO_COME, 0),
        states.getOrDefault(DeviceState.ONLINE, 0),
        states.getOrDefault(DeviceState.ENDED, 0) + states.getOrDefault(DeviceState.OFFLINE, 0),
        committed,
        acknowledged,
        waiting);
  }
}
