package dev.tankwright.controller.sensing;

import dev.tankwright.controller.board.DeviceProfile;
import dev.tankwright.controller.board.Parameter;
import dev.tankwright.controller.memory.RunningChecksum;

/**
 * Temperature of every reading that the 12-bit converter can give, worked out once, as it would
 * stand in a board's flash memory. The converter reads 0 at the low end of its resistance range and
 * 4095 at the high end.
 */
public final class TemperatureTable {
  /** Highest reading. */
  public static final int FULL_SCALE = 4095;

  // A platinum sensor of 1000 Ω gains more than this many mΩ for each m°C over the whole standard.
  private static final int LEAST_SLOPE = 2;

  private static final int WORDS_AT_ONCE = 8;

  private final RunningChecksum checksum;
  private final int[] milliC = new int[FULL_SCALE + 1];

  /** Works out the table for the profile's converter range. */
  public TemperatureTable(DeviceProfile profile) {
    long low = profile.get(Parameter.SENSOR_RANGE_LOW);
    long span = profile.get(Parameter.SENSOR_RANGE_HIGH) - low;
    milliC[0] = Pt1000.milliCelsius((int) low);
    int widest = (int) (span / FULL_SCALE / LEAST_SLOPE) + 2;
    for (int counts = 1; counts <= FULL_SCALE; counts++) {
      int milliOhm = (int) (low + (counts * span + FULL_SCALE / 2) / FULL_SCALE);
      int from = milliC[counts - 1];
      int to = Math.min(Pt1000.HIGHEST_MILLI_C, from + widest);
      milliC[counts] = Pt1000.milliCelsius(milliOhm, from, to);
    }
    checksum = new RunningChecksum(new Words());
  }

  /** Goes on verifying that the table is what it was: called once a second, 8.5 min a round. */
  void verify() {
    for (int i = 0; i < WORDS_AT_ONCE; i++) {
      checksum.step();
    }
  }

  /** True when it is not. */
  boolean isWrong() {
    return checksum.isWrong();
  }

  /** Changes one word, as failing memory would. */
  void damage() {
    milliC[FULL_SCALE / 2] ^= 1;
  }

  private final class Words implements RunningChecksum.Table {
    @Override
    public int words() {
      return milliC.length;
    }

    @Override
    public int word(int index) {
      return milliC[index];
    }
  }

  /** Temperature of a reading, m°C; a reading beyond 12 bits counts as the nearer end. */
  int milliCelsius(int counts) {
    return milliC[Math.max(0, Math.min(FULL_SCALE, counts))];
  }
}
