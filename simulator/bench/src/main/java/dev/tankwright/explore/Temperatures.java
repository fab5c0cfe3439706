package dev.tankwright.explore;

import dev.tankwright.controller.board.DeviceProfile;
import dev.tankwright.controller.board.Parameter;
import dev.tankwright.rule.PinLimits;
import java.util.Arrays;
import java.util.stream.IntStream;

/**
 * The classes of temperature that matter, coldest first, as sensor counts: one between any two
 * neighbouring thresholds of the controller.
 */
final class Temperatures {
  private static final int AWAY_MILLI_K = 1_000;

  /** At least one count of the converter, about 0.4 K. */
  private static final int NEAR_MILLI_K = 400;

  private static final int OPEN = 4095;
  private static final int SHORT = 0;

  private final int setpointMilliC;
  private final int[] counts;
  private final boolean sparse;

  Temperatures(DeviceProfile profile, Detail detail) {
    int band = profile.get(Parameter.HYSTERESIS);
    int limit = profile.get(Parameter.CUT_OFF_LIMIT);
    int released = limit - profile.get(Parameter.CUT_OFF_RELEASE);
    sparse = detail.isSparse();
    setpointMilliC = profile.get(Parameter.SETPOINT_MAXIMUM);
    int overshot = setpointMilliC + profile.get(Parameter.OVERSHOOT_LIMIT);
    PinLimits pins = new PinLimits(profile);
    int below = setpointMilliC - band - AWAY_MILLI_K;
    int warm = setpointMilliC + band + AWAY_MILLI_K;
    int hot = limit + NEAR_MILLI_K;
    // Between warm and hot, so that no change from class to class looks like a jump.
    int between = (warm + hot) / 2;
    int[] fine = {overshot + AWAY_MILLI_K, Math.max(released, overshot) + AWAY_MILLI_K};
    IntStream inner = detail == Detail.FINE ? Arrays.stream(fine) : IntStream.empty();
    counts =
        IntStream.concat(IntStream.of(below, warm, between, hot), inner)
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
    if (sparse) {
      return new int[] {counts[0], counts[counts.length - 1], OPEN};
    }
    int[] all = Arrays.copyOf(counts, counts.length + 2);
    all[counts.length] = OPEN;
    all[counts.length + 1] = SHORT;
    return all;
  }
}
