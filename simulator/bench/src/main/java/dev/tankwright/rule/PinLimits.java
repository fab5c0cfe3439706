package dev.tankwright.rule;

import dev.tankwright.controller.board.DeviceProfile;
import dev.tankwright.controller.board.Inputs;
import dev.tankwright.controller.board.Parameter;
import dev.tankwright.controller.sensing.Pt1000;

/** What the pins mean, worked out apart from the controller: by counts, not by its table. */
public final class PinLimits {
  private static final int FULL_SCALE = 4095;
  private static final int MARGIN = 15;

  private final long lowMilliOhm;
  private final long spanMilliOhm;

  /** Takes the converter's range from the profile. */
  public PinLimits(DeviceProfile profile) {
    lowMilliOhm = profile.get(Parameter.SENSOR_RANGE_LOW);
    spanMilliOhm = profile.get(Parameter.SENSOR_RANGE_HIGH) - lowMilliOhm;
  }

  /** True for a reading that is neither an open nor a shorted circuit. */
  static boolean isBelievable(int counts) {
    return counts > MARGIN && counts < FULL_SCALE - MARGIN;
  }

  /** The lowest reading at or above a temperature, m°C. */
  public int countsFrom(int milliC) {
    int low = 0;
    int high = FULL_SCALE;
    while (low < high) {
      int middle = (low + high) / 2;
      if (milliC(middle) >= milliC) {
        high = middle;
      } else {
        low = middle + 1;
      }
    }
    return low;
  }

  /** Temperature of a reading, m°C. */
  private int milliC(int counts) {
    long milliOhm = lowMilliOhm + (counts * spanMilliOhm + FULL_SCALE / 2) / FULL_SCALE;
    return Pt1000.milliCelsius((int) milliOhm);
  }

  static boolean isLidClosed(Inputs in) {
    return in.lidMakeContact() && !in.lidBreakContact();
  }

  static boolean isDrainShut(Inputs in) {
    return in.drainClosedEnd() && !in.drainOpenEnd();
  }
}
