package dev.tankwright.controller.board;

/**
 * The faults, as data: the safety requirement each belongs to, how long its condition must last,
 * how severe it is and what clears it. The statement and the reaction time of every requirement
 * stand in the safety table of the documentation; the condition stands in the guard's table of
 * monitors, or where the fault is raised.
 */
public enum Fault {
  /** Start was commanded while the lid was not closed. */
  LID_OPEN_AT_START("SR-01", Severity.ADVISORY, ClearRule.ACKNOWLEDGE),
  /** Start was commanded while the solution stood below the minimum. */
  LEVEL_LOW_AT_START("SR-09", Severity.ADVISORY, ClearRule.ACKNOWLEDGE),
  /** A cycle was started hotter than protein soil stands, with enzymatic chemistry. */
  PROTEIN_MAY_SET("SR-23", Severity.ADVISORY, ClearRule.ACKNOWLEDGE),
  /** The two lid contacts contradict each other. */
  LID_CONTRADICTION("SR-02", Parameter.LID_CONTRADICTION_TIME, Severity.LOCKOUT, ClearRule.RESET),
  /** The second sensor reached the cut-off limit. */
  OVER_TEMPERATURE("SR-03", Parameter.CUT_OFF_TIME, Severity.CUT_OFF, ClearRule.RESET),
  /** The solution overshot its setpoint by more than regulation ever should. */
  OVERSHOOT("SR-04", Parameter.OVERSHOOT_TIME, Severity.CUT_OFF, ClearRule.RESET),
  /** The control sensor's circuit is open. */
  CONTROL_SENSOR_OPEN("SR-05", Parameter.SENSOR_FAULT_TIME, Severity.CUT_OFF, ClearRule.RESET),
  /** The control sensor's circuit is shorted. */
  CONTROL_SENSOR_SHORT("SR-05", Parameter.SENSOR_FAULT_TIME, Severity.CUT_OFF, ClearRule.RESET),
  /** The cut-off sensor's circuit is open. */
  CUT_OFF_SENSOR_OPEN("SR-05", Parameter.SENSOR_FAULT_TIME, Severity.CUT_OFF, ClearRule.RESET),
  /** The cut-off sensor's circuit is shorted. */
  CUT_OFF_SENSOR_SHORT("SR-05", Parameter.SENSOR_FAULT_TIME, Severity.CUT_OFF, ClearRule.RESET),
  /** The two sensors disagree. */
  SENSORS_DISAGREE("SR-06", Parameter.DISAGREE_TIME, Severity.CUT_OFF, ClearRule.RESET),
  /** The control sensor reads a change that no bath makes. */
  CONTROL_SENSOR_JUMP("SR-17", Severity.CUT_OFF, ClearRule.RESET),
  /** The cut-off sensor reads a change that no bath makes. */
  CUT_OFF_SENSOR_JUMP("SR-17", Severity.CUT_OFF, ClearRule.RESET),
  /** The control sensor stands still while the solution is heated. */
  CONTROL_SENSOR_FROZEN("SR-19", Parameter.FROZEN_TIME, Severity.CUT_OFF, ClearRule.RESET),
  /** The cut-off sensor stands still while the solution is heated. */
  CUT_OFF_SENSOR_FROZEN("SR-19", Parameter.FROZEN_TIME, Severity.CUT_OFF, ClearRule.RESET),
  /** Current flows through the heater though it is commanded off. */
  HEATER_RELAY_WELDED("SR-07", Parameter.WELDED_TIME, Severity.CUT_OFF, ClearRule.SERVICE),
  /** The heater is commanded on and no current flows. */
  HEATER_WITHOUT_CURRENT("SR-08", Parameter.NO_CURRENT_TIME, Severity.LOCKOUT, ClearRule.RESET),
  /** The tank ran below its minimum while heating or sonicating. */
  DRY_TANK("SR-09", Severity.CUT_OFF, ClearRule.RESET),
  /** The fill mark is wet while the minimum is dry. */
  LEVEL_CONTRADICTION(
      "SR-10", Parameter.LEVEL_CONTRADICTION_TIME, Severity.CUT_OFF, ClearRule.RESET),
  /** The generator reports a fault of its own, or does not follow its enable. */
  GENERATOR_FAULT("SR-11", Parameter.GENERATOR_TIME, Severity.LOCKOUT, ClearRule.RESET),
  /** The drain is open and the tank does not empty. */
  DRAIN_BLOCKED("SR-12", Parameter.DRAIN_MAXIMUM, Severity.LOCKOUT, ClearRule.RESET),
  /** The drain valve is not where it is commanded to be. */
  VALVE_NOT_IN_PLACE("SR-13", Parameter.VALVE_TIME, Severity.LOCKOUT, ClearRule.RESET),
  /** The millisecond counter stalled or jumped. */
  CLOCK_FAULT("SR-14", Severity.CUT_OFF, ClearRule.RESET),
  /** The stages of a scan did not follow each other as they must. */
  PROGRAM_FLOW("SR-20", Severity.CUT_OFF, ClearRule.SERVICE),
  /** What was kept cannot be believed, or a table that never changes has changed. */
  MEMORY_CORRUPT("SR-18", Severity.CUT_OFF, ClearRule.RESET),
  /** One cycle lost its power too often. */
  POWER_CUTS_REPEATED("SR-21", Severity.LOCKOUT, ClearRule.RESET),
  /** A key of the panel gives its command again and again. */
  COMMAND_STUCK("SR-22", Parameter.KEY_STUCK_TIME, Severity.LOCKOUT, ClearRule.RESET),
  /** The heater was on for its time and the solution did not warm. */
  HEATING_WITHOUT_EFFECT("SR-15", Severity.LOCKOUT, ClearRule.RESET),
  /** The solution did not reach its setpoint in the longest time allowed. */
  HEAT_UP_TOO_LONG("SR-16", Severity.LOCKOUT, ClearRule.RESET);

  private static final Fault[] ALL = values();

  private final String requirement;
  private final Parameter holdTime;
  private final Severity severity;
  private final ClearRule clearRule;

  Fault(String requirement, Severity severity, ClearRule clearRule) {
    this(requirement, null, severity, clearRule);
  }

  Fault(String requirement, Parameter holdTime, Severity severity, ClearRule clearRule) {
    this.requirement = requirement;
    this.holdTime = holdTime;
    this.severity = severity;
    this.clearRule = clearRule;
  }

  /** The fault with the given ordinal. */
  public static Fault of(int ordinal) {
    return ALL[ordinal];
  }

  /** How many faults there are; at most 32, for they are latched in one word. */
  public static int count() {
    return ALL.length;
  }

  /** Id of the safety requirement, as in the safety table. */
  public String requirement() {
    return requirement;
  }

  /**
   * How long the condition must last before the fault is latched; {@code null} where it is latched
   * at once, or where whoever finds it keeps the time.
   */
  public Parameter holdTime() {
    return holdTime;
  }

  /** What the fault does to the device. */
  public Severity severity() {
    return severity;
  }

  /** What clears the fault. */
  public ClearRule clearRule() {
    return clearRule;
  }

  /** The fault's bit in a word of latched faults. */
  public int bit() {
    return 1 << ordinal();
  }
}
