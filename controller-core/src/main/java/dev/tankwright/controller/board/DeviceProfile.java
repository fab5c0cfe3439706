package dev.tankwright.controller.board;

/**
 * The limits and times of one device. Immutable; the parts of the controller read what they need
 * once, when they are made.
 */
public final class DeviceProfile {
  private final int[] values;

  private DeviceProfile(int[] values) {
    this.values = values;
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
    return new DeviceProfile(Parameter.standards());
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
    changed[parameter.ordinal()] = parameter.check(value);
    return new DeviceProfile(changed);
  }
}
