package dev.tankwright.controller.board;

/**
 * Every limit and time of the controller, as data: key, unit, default for the six-litre bench bath
 * and valid range. The defaults are common practice, no source, unless the comment says otherwise.
 */
public enum Parameter {
  /** Lowest setpoint a recipe may ask. */
  SETPOINT_MINIMUM("setpoint-minimum", Unit.MILLI_CELSIUS, 21_000, 15_000, 40_000),
  /** Highest setpoint a recipe may ask. */
  SETPOINT_MAXIMUM("setpoint-maximum", Unit.MILLI_CELSIUS, 60_000, 40_000, 65_000),
  /** Longest cleaning or degassing time a recipe may ask. */
  RUN_MAXIMUM("run-maximum", Unit.MILLISECONDS, 3_600_000, 60_000, 7_200_000),
  /** Limit of the cut-off on the second sensor. */
  CUT_OFF_LIMIT("cut-off-limit", Unit.MILLI_CELSIUS, 70_000, 62_000, 75_000),
  /** How long the cut-off limit must be reached before the cut-off acts. */
  CUT_OFF_TIME("cut-off-time", Unit.MILLISECONDS, 100, 0, 180),
  /** How far the cut-off sensor must be below its limit before a reset is accepted. */
  CUT_OFF_RELEASE("cut-off-release", Unit.MILLI_KELVIN, 5_000, 1_000, 30_000),
  /** How far above its setpoint the solution may come. */
  OVERSHOOT_LIMIT("overshoot-limit", Unit.MILLI_KELVIN, 8_000, 3_000, 15_000),
  /** How long an overshoot must last. */
  OVERSHOOT_TIME("overshoot-time", Unit.MILLISECONDS, 5_000, 100, 60_000),
  /** How far the two sensors may be apart. */
  DISAGREE_LIMIT("disagree-limit", Unit.MILLI_KELVIN, 3_000, 1_000, 10_000),
  /** How long a disagreement must last. */
  DISAGREE_TIME("disagree-time", Unit.MILLISECONDS, 5_000, 100, 60_000),
  /** How long a sensor reading must lie outside its range before the sensor counts as broken. */
  SENSOR_FAULT_TIME("sensor-fault-time", Unit.MILLISECONDS, 100, 0, 2_000),
  /** How far a sensor may move within one window of time: 5 K in 1 s. */
  JUMP_LIMIT("jump-limit", Unit.MILLI_KELVIN, 5_000, 1_000, 50_000),
  /** The window of time for the jump of a sensor. */
  JUMP_WINDOW("jump-window", Unit.MILLISECONDS, 1_000, 100, 10_000),
  /** How far one sensor moves, while heating, until the other one that stands still is frozen. */
  FROZEN_MOVE("frozen-move", Unit.MILLI_KELVIN, 1_500, 500, 10_000),
  /** How long a sensor must have stood still after that. */
  FROZEN_TIME("frozen-time", Unit.MILLISECONDS, 5_000, 100, 60_000),
  /** How long current may flow through a heater that is commanded off. */
  WELDED_TIME("welded-time", Unit.MILLISECONDS, 500, 100, 5_000),
  /** How long a commanded heater may be without current. */
  NO_CURRENT_TIME("no-current-time", Unit.MILLISECONDS, 1_000, 100, 10_000),
  /** How long heating up may last; pauses do not count. */
  HEAT_UP_MAXIMUM("heat-up-maximum", Unit.MILLISECONDS, 5_400_000, 20_000, 14_400_000),
  /** Time in which a heater that is on must have an effect. */
  EFFECT_TIME("effect-time", Unit.MILLISECONDS, 240_000, 10_000, 1_800_000),
  /** The effect: how far the solution must have warmed in that time. */
  EFFECT_RISE("effect-rise", Unit.MILLI_KELVIN, 500, 100, 5_000),
  /** How long the minimum level must be dry before the tank counts as dry. */
  DRY_TIME("dry-time", Unit.MILLISECONDS, 50, 0, 90),
  /** How long the level contacts may contradict each other. */
  LEVEL_CONTRADICTION_TIME("level-contradiction-time", Unit.MILLISECONDS, 2_000, 100, 30_000),
  /** How long the lid must be seen closed before it counts as closed; opening acts at once. */
  LID_CLOSE_FILTER("lid-close-filter", Unit.MILLISECONDS, 50, 20, 500),
  /** How long the lid contacts may contradict each other. */
  LID_CONTRADICTION_TIME("lid-contradiction-time", Unit.MILLISECONDS, 500, 100, 5_000),
  /** How long the generator may not follow its enable, or report a fault. */
  GENERATOR_TIME("generator-time", Unit.MILLISECONDS, 300, 50, 5_000),
  /** How long the drain may be open with the minimum level still wet. */
  DRAIN_MAXIMUM("drain-maximum", Unit.MILLISECONDS, 600_000, 10_000, 3_600_000),
  /** How long the valve stays open after the minimum level has fallen dry. */
  DRAIN_TAIL("drain-tail", Unit.MILLISECONDS, 60_000, 0, 600_000),
  /** How long the drain valve may be away from its commanded end. */
  VALVE_TIME("valve-time", Unit.MILLISECONDS, 5_000, 500, 30_000),
  /** Longest time between two scans that counts as one. */
  SCAN_MAXIMUM("scan-maximum", Unit.MILLISECONDS, 100, 20, 1_000),
  /** How many scans in a row the counter may stand still. */
  STALL_SCANS("stall-scans", Unit.NUMBER, 5, 2, 100),
  /** Two equal commands closer together than this are not given by a hand. */
  KEY_GAP("key-gap", Unit.MILLISECONDS, 400, 50, 2_000),
  /** How long the same command may be repeated without such a gap. */
  KEY_STUCK_TIME("key-stuck-time", Unit.MILLISECONDS, 5_000, 500, 60_000),
  /** Longest pause, after which the cycle is stopped. */
  PAUSE_MAXIMUM("pause-maximum", Unit.MILLISECONDS, 1_800_000, 10_000, 7_200_000),
  /** Rest without ultrasound after which degassing is required again. */
  REST_MAXIMUM("rest-maximum", Unit.MILLISECONDS, 14_400_000, 60_000, 86_400_000),
  /** Age of the solution from which on it is due for a change: eight hours of use. */
  SOLUTION_AGE_MAXIMUM("solution-age-maximum", Unit.MILLISECONDS, 28_800_000, 60_000, 86_400_000),
  /** Whether a start is refused when the solution is due: 0 it is only shown, 1 refused. */
  SOLUTION_AGE_REFUSES("solution-age-refuses", Unit.NUMBER, 0, 0, 1),
  /** Length of the working day, from its first cycle on; at its end the tank is to be drained. */
  WORKING_DAY("working-day", Unit.SECONDS, 36_000, 600, 86_400),
  /** Time after which the next foil check is due: a quarter of a year. */
  FOIL_INTERVAL("foil-interval", Unit.SECONDS, 7_776_000, 600, 31_536_000),
  /** Temperature above which protein soil sets; enzymatic chemistry is then warned of. */
  PROTEIN_LIMIT("protein-limit", Unit.MILLI_CELSIUS, 45_000, 30_000, 60_000),
  /** How many losses of power end a cycle. */
  POWER_CUTS_MAXIMUM("power-cuts-maximum", Unit.NUMBER, 3, 1, 10),
  /** Whether the solution is kept warm after a completed cycle: 0 no, 1 yes. */
  KEEP_WARM("keep-warm", Unit.NUMBER, 0, 0, 1),
  /** How long the solution is kept warm at most. */
  KEEP_WARM_MAXIMUM("keep-warm-maximum", Unit.MILLISECONDS, 7_200_000, 60_000, 28_800_000),
  /** How long everything must be in order before the self test is passed. */
  SELF_TEST_TIME("self-test-time", Unit.MILLISECONDS, 500, 100, 10_000),
  /** Control mode of the heater: 0 on-off with hysteresis, 1 proportional-integral. */
  CONTROL_MODE("control-mode", Unit.NUMBER, 0, 0, 1),
  /** Half width of the hysteresis around the setpoint. */
  HYSTERESIS("hysteresis", Unit.MILLI_KELVIN, 300, 100, 3_000),
  /** Proportional band: the deviation that asks for full power. */
  PROPORTIONAL_BAND("proportional-band", Unit.MILLI_KELVIN, 2_000, 500, 20_000),
  /** Integral time of the proportional-integral control. */
  INTEGRAL_TIME("integral-time", Unit.MILLISECONDS, 1_200_000, 60_000, 7_200_000),
  /** Period over which the proportional-integral control switches the heater once. */
  SWITCHING_PERIOD("switching-period", Unit.MILLISECONDS, 10_000, 2_000, 60_000),
  /** Centre frequency of the generator. */
  DRIVE_FREQUENCY("drive-frequency", Unit.HERTZ, 40_000, 20_000, 200_000),
  /** How far the frequency is swept to each side. */
  SWEEP_WIDTH("sweep-width", Unit.HERTZ, 1_000, 0, 5_000),
  /** Period of one sweep to and fro. */
  SWEEP_PERIOD("sweep-period", Unit.MILLISECONDS, 1_000, 100, 10_000),
  /** How long the drive is on in each degassing pulse. */
  PULSE_ON("pulse-on", Unit.MILLISECONDS, 6_000, 100, 60_000),
  /** How long the drive is off between two degassing pulses. */
  PULSE_OFF("pulse-off", Unit.MILLISECONDS, 4_000, 100, 60_000),
  /** Drive level while cleaning. */
  CLEANING_LEVEL("cleaning-level", Unit.PERMILLE, 1_000, 100, 1_000),
  /** Rated power of the heater, for the estimate of energy alone. */
  HEATER_POWER("heater-power", Unit.WATT, 300, 50, 5_000),
  /** Rated power of the generator, for the estimate of energy alone. */
  ULTRASOUND_POWER("ultrasound-power", Unit.WATT, 150, 20, 3_000),
  /** Resistance at which the converter reads 0. */
  SENSOR_RANGE_LOW("sensor-range-low", Unit.MILLI_OHM, 900_000, 800_000, 1_000_000),
  /** Resistance at which the converter reads full scale. */
  SENSOR_RANGE_HIGH("sensor-range-high", Unit.MILLI_OHM, 1_500_000, 1_385_055, 2_000_000);

  private static final Parameter[] ALL = values();

  private final String key;
  private final Unit unit;
  private final int standard;
  private final int minimum;
  private final int maximum;

  Parameter(String key, Unit unit, int standard, int minimum, int maximum) {
    this.key = key;
    this.unit = unit;
    this.standard = standard;
    this.minimum = minimum;
    this.maximum = maximum;
  }

  /** Every parameter's key in a file. */
  public String key() {
    return key;
  }

  /** Unit of the value and of its range. */
  public Unit unit() {
    return unit;
  }

  /** Value for the six-litre bench bath. */
  public int standard() {
    return standard;
  }

  /** Lowest valid value. */
  public int minimum() {
    return minimum;
  }

  /** Highest valid value. */
  public int maximum() {
    return maximum;
  }

  /**
   * The given value, when it is valid.
   *
   * @throws IllegalArgumentException when it is not; the message names the parameter and its range
   */
  public int check(int value) {
    return check(value, minimum);
  }

  /** As {@link #check(int)}, with the lower end of times lifted, see {@link #shortMinimum()}. */
  int checkShort(int value) {
    return check(value, shortMinimum());
  }

  /** Lowest value in a profile with short times: 1 ms for a time that may not be 0. */
  public int shortMinimum() {
    return unit == Unit.MILLISECONDS ? Math.min(minimum, 1) : minimum;
  }

  private int check(int value, int least) {
    if (value < least || value > maximum) {
      throw new IllegalArgumentException(
          key
              + " is "
              + value
              + "; it must lie from "
              + least
              + " to "
              + maximum
              + " ("
              + unit
              + ")");
    }
    return value;
  }

  static int[] standards() {
    int[] values = new int[ALL.length];
    for (Parameter parameter : ALL) {
      values[parameter.ordinal()] = parameter.standard;
    }
    return values;
  }
}
