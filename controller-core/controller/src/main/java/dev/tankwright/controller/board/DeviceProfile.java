package dev.tankwright.controller.board;

/**
 * The limits and times of one device. Immutable; the parts of the controller read what they need
 * once, when they are made.
 */
public final class DeviceProfile {
  private static final int SHORT_BEEP_MS = 1;

  private final int[] values;
  private final boolean shortTime;

  private DeviceProfile(int[] values, boolean shortTime) {
    this.values = values;
    this.shortTime = shortTime;
    int lowest = get(Parameter.SETPOINT_MAXIMUM) + 2_000;
    if (get(Parameter.CUT_OFF_LIMIT) < lowest) {
      throw new IllegalArgumentException(
          "cut-off-limit is "
              + get(Parameter.CUT_OFF_LIMIT)
              + " m°C; it must lie at least 2 K above setpoint-maximum, so from "
              + lowest);
    }
  }

  /** The six-litre bench bath. */
  public static DeviceProfile sixLitre() {
    return new DeviceProfile(Parameter.standards(), false);
  }

  /** Value of a parameter, in the parameter's unit. */
  public int get(Parameter parameter) {
    return values[parameter.ordinal()];
  }

  /**
   * A profile that differs in one parameter.
   *
   * @throws IllegalArgumentException when the value is outside the parameter's range or does not go
   *     with the others
   */
  public DeviceProfile with(Parameter parameter, int value) {
    int[] changed = values.clone();
    changed[parameter.ordinal()] = shortTime ? parameter.checkShort(value) : parameter.check(value);
    return new DeviceProfile(changed, shortTime);
  }

  /**
   * The same profile, in which times may from now on be as short as 1 ms and no beep outlasts a
   * scan. For proofs about logic only, in which every state is to be visited: no device can run
   * with such times.
   */
  public DeviceProfile withShortTime() {
    return new DeviceProfile(values, true);
  }

  /** True for a profile that is good for proofs about logic only. */
  public boolean isShortTime() {
    return shortTime;
  }

  /** Length of a beep that usually lasts the given time, ms. */
  public int beepMs(int usualMs) {
    return shortTime ? SHORT_BEEP_MS : usualMs;
  }
}
