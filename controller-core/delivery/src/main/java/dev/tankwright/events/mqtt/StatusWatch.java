package dev.tankwright.events.mqtt;

import dev.tankwright.events.CycleEvent;
import dev.tankwright.events.EventType;
import java.util.TreeSet;

/** Reads a device's status off its events. One thread. */
public final class StatusWatch {
  private final TreeSet<String> faults = new TreeSet<>();
  private String phase;

  /** Takes the next event; returns whether the status has changed. */
  public boolean take(CycleEvent event) {
    DeviceStatus before = status();
    if (event.type() == EventType.PHASE_CHANGED) {
      phase = String.valueOf(event.data().values().get("to"));
    } else if (event.type() == EventType.FAULT_RAISED) {
      faults.add(String.valueOf(event.data().values().get("fault")));
    } else if (event.type() == EventType.FAULT_CLEARED) {
      faults.remove(String.valueOf(event.data().values().get("fault")));
    }
    return !before.equals(status());
  }

  /** What is known so far. */
  public DeviceStatus status() {
    return new DeviceStatus(phase, !faults.isEmpty(), false);
  }
}
