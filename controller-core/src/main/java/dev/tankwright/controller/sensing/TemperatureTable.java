package dev.tankwright.controller.sensing;

import dev.tankwright.controller.board.DeviceProfile;
import dev.tankwright.controller.board.Parameter;

/**
 * Temperature of every reading that the 12-bit converter can give, worked out once, as it would
 * stand in a board's flash memory. The converter reads 0 at the low end of its resistance range and
 * 4095 at the high end.
 */
public final class TemperatureTable {
  /** Highest reading. */
  public static final int FULL_SCALE = 4095;

  private final int[] milliC = new int[FULL_SCALE + 1];

  /** Works out the table for the profile's converter range. */
  public TemperatureTable(DeviceProfile profile) {
    long low = profile.get(Parameter.SENSOR_RANGE_LOW);
    long span = profile.get(Parameter.SENSOR_RANGE_HIGH) - low;
    for (int counts = 0; counts <= FULL_SCALE; counts++) {
      milliC[counts] =
          Pt1000.milliCelsius((int) (low + (counts * span + FULL_SCALE / 2) / FULL_SCALE));
    }
  }

  /** Temperature of a reading, m°C; a reading beyond 12 bits counts as the nearer end. */
  int milliCelsius(int counts) {
    return milliC[Math.max(0, Math.min(FULL_SCALE, counts))];
  }
}
