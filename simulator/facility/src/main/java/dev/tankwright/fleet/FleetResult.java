package dev.tankwright.fleet;

import java.time.Duration;
import java.time.LocalDate;
import java.util.List;
import java.util.function.ToLongFunction;

/**
 * What became of a fleet's day.
 *
 * @param date the simulated date
 * @param dayMillis how far the day went, ms
 * @param isStopped true when somebody has stopped it before its end
 * @param simulated how long the day took
 * @param all how long it took with everything before and after
 * @param devices what became of each
 */
public record FleetResult(
    LocalDate date,
    long dayMillis,
    boolean isStopped,
    Duration simulated,
    Duration all,
    List<DeviceResult> devices) {
  /** Keeps its own copy of the list. */
  public FleetResult {
    devices = List.copyOf(devices);
  }

  /** A figure, added up over all devices. */
  public long sum(ToLongFunction<DeviceResult> figure) {
    return devices.stream().mapToLong(figure).sum();
  }

  /** True when every event of every device is kept, and acknowledged. */
  public boolean isWhole() {
    return devices.stream().allMatch(DeviceResult::isWhole);
  }
}
