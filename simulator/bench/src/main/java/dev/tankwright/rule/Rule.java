package dev.tankwright.rule;

/** What must hold in every scan, each with the safety requirement it stands for. */
public enum Rule {
  /** Nothing is thrown. */
  SCAN_THROWS_NOTHING("", "a scan throws nothing"),
  /** Lid. */
  LID_STOPS_ULTRASOUND("SR-01", "no ultrasound unless both lid contacts say closed"),
  /** Level. */
  NOTHING_OVER_DRY_TANK("SR-09", "neither heat nor ultrasound when dry for its time"),
  /** Drain and actuators. */
  NOTHING_OVER_OPEN_DRAIN("SR-13", "neither heat nor ultrasound unless both ends say drain shut"),
  /** Cut-off. */
  NO_HEAT_OVER_LIMIT("SR-03", "no heat over the cut-off limit after its time"),
  /** Sensors. */
  NO_HEAT_WITHOUT_SENSORS("SR-05", "no heat unless both sensors are valid"),
  /** Cut-off relay. */
  CUT_OFF_OPENS_RELAY("SR-03", "the cut-off relay is open while a CUT_OFF fault is latched"),
  /** Mains. */
  NOTHING_WITHOUT_MAINS("", "nothing is driven without mains"),
  /** Valve. */
  DRAIN_SHUT_WHILE_DRIVING("SR-13", "the drain is never opened while heating or sonicating"),
  /** Drive. */
  DRIVE_WITHIN_LIMITS("SR-11", "level and frequency are in range while sonicating, else 0"),
  /** Phases that drive nothing. */
  REST_DRIVES_NOTHING("", "heat and ultrasound only while running, the drain only in DRAINING"),
  /** Lockout. */
  FAULT_LOCKS_OUT("", "LOCKOUT exactly while a fault that stops is latched"),
  /** Start and resume. */
  RUNS_ON_COMMAND("SR-01", "a cycle begins with START and goes on with RESUME alone"),
  /** Cycles and power. */
  CYCLE_OUTLASTS_POWER("SR-21", "a cycle that lost its power comes back held, or in LOCKOUT"),
  /** Too many losses of power. */
  POWER_CUTS_END_CYCLE("SR-21", "a cycle that lost its power too often ends in LOCKOUT"),
  /** Reset. */
  LOCKOUT_NEEDS_RESET(
      "", "LOCKOUT is left by RESET alone, with no cause present and no service due"),
  /** Faults are told. */
  FAULTS_TOLD_ONCE("", "every fault is announced once when latched and once when cleared"),
  /** Panel and faults. */
  PANEL_SHOWS_WORST("", "the panel shows the most severe fault that was announced"),
  /** Phases are told. */
  PHASES_BY_TABLE("", "every change of phase is a line of the table and is announced"),
  /** Remaining time. */
  TIME_LEFT_FALLS(
      "",
      "the remaining time grows only by required degassing or what was not saved, and is 0"
          + " outside"),
  /** Notices. */
  NO_NOTICE_LOST("", "no notice is lost while the ring is drained after every scan"),
  /** Watchdog. */
  WATCHDOG_PULSES("", "the watchdog pulse changes in every scan"),
  /** Way back; judged over many scans by an exploration, never by a single one. */
  STANDBY_IN_REACH("", "with healthy parts and the operator's keys STANDBY is reached again");

  private final String requirement;
  private final String statement;

  Rule(String requirement, String statement) {
    this.requirement = requirement;
    this.statement = statement;
  }

  /** Id of the safety requirement, as in the safety table; empty where it stands for none alone. */
  public String requirement() {
    return requirement;
  }

  /** What must hold, in a few words. */
  public String statement() {
    return statement;
  }
}
