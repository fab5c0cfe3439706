package dev.tankwright.explore;

import dev.tankwright.controller.board.DeviceProfile;
import dev.tankwright.controller.board.Parameter;
import dev.tankwright.rule.PinLimits;
import java.util.Arrays;

/**
 * The classes of temperature that matter, coldest first, as sensor counts: one between any two
 * neighbouring thresholds of the controller.
 */
final class Temperatures {
  private static final int AWAY_MILLI_K = 1_000;
  private static final int OPEN = 4095;
  private static final int SHORT = 0;

  private final int setpointMilliC;
  private final int[] counts;

  Temperatures(DeviceProfile profile) {
    int band = profile.get(Parameter.DEAD_BAND);
    int limit = profile.get(Parameter.CUT_OFF_LIMIT);
    int released = limit - profile.get(Parameter.CUT_OFF_RELEASE);
    int lowest = profile.get(Parameter.SETPOINT_MINIMUM);
    int highest = profile.get(Parameter.SETPOINT_MAXIMUM);
    setpointMilliC = Math.max(lowest, Math.min(highest, 40_000));
    int overshot = setpointMilliC + profile.get(Parameter.OVERSHOOT_LIMIT);
    PinLimits pins = new PinLimits(profile);
    counts =
        Arrays.stream(
                new int[] {
                  setpointMilliC - band - AWAY_MILLI_K,
                  setpointMilliC + band + AWAY_MILLI_K,
                  overshot + AWAY_MILLI_K,
                  Math.max(released, overshot) + AWAY_MILLI_K,
                  limit + AWAY_MILLI_K
                })
            .map(pins::countsFrom)
            .sorted()
            .distinct()
            .toArray();
  }

  int setpointMilliC() {
    return setpointMilliC;
  }

  /** How many classes the bath itself can have. */
  int count() {
    return counts.length;
  }

  /** Counts of a class. */
  int counts(int index) {
    return counts[index];
  }

  /** Every reading that a faulty sensor can give. */
  int[] faultyCounts() {
    int[] all = Arrays.copyOf(counts, counts.length + 2);
    all[counts.length] = OPEN;
    all[counts.length + 1] = SHORT;
    return all;
  }
}
