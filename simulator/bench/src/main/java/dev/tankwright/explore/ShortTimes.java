package dev.tankwright.explore;

import dev.tankwright.controller.board.DeviceProfile;
import dev.tankwright.controller.board.Parameter;
import dev.tankwright.controller.board.Unit;

/**
 * Shortens the times of a profile to a few scans. A longer time never becomes the shorter one; 0
 * stays 0; temperatures and everything else stay as they are.
 */
public final class ShortTimes {
  /** Time from scan to scan, ms. */
  public static final int SCAN_MS = 10;

  private static final int HOUR = 3_600_000;

  private ShortTimes() {}

  /** The profile with short times. */
  public static DeviceProfile of(DeviceProfile profile) {
    DeviceProfile shortened = profile.withShortTime();
    for (Parameter parameter : Parameter.values()) {
      if (parameter.unit() == Unit.MILLISECONDS) {
        shortened = shortened.with(parameter, shortened(parameter, profile.get(parameter)));
      }
    }
    return shortened.with(Parameter.STALL_SCANS, Parameter.STALL_SCANS.minimum());
  }

  private static int shortened(Parameter parameter, int millis) {
    if (parameter == Parameter.SCAN_MAXIMUM) {
      return 2 * SCAN_MS;
    }
    return Math.min(millis, scans(millis) * SCAN_MS);
  }

  private static int scans(int millis) {
    if (millis == 0) {
      return 0;
    }
    return millis <= HOUR ? 1 : 2;
  }
}
