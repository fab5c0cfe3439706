package dev.tankwright.plant;

import java.util.Locale;

/** The ways in which parts of the bath can be broken, each by name. */
public enum PartFault {
  /** The control sensor's circuit is open. */
  CONTROL_SENSOR_OPEN,
  /** The control sensor's circuit is shorted. */
  CONTROL_SENSOR_SHORT,
  /** The control sensor's reading stands still. */
  CONTROL_SENSOR_STUCK,
  /** The cut-off sensor's circuit is open. */
  CUT_OFF_SENSOR_OPEN,
  /** The cut-off sensor's circuit is shorted. */
  CUT_OFF_SENSOR_SHORT,
  /** The lid's making contact does not close. */
  LID_MAKE_CONTACT_BROKEN,
  /** The lid's breaking contact stays closed. */
  LID_BREAK_CONTACT_WELDED,
  /** The minimum level contact reads wet, whatever the level. */
  MINIMUM_LEVEL_STUCK_WET,
  /** The minimum level contact reads dry, whatever the level. */
  MINIMUM_LEVEL_STUCK_DRY,
  /** The heater relay's contacts are welded shut. */
  HEATER_RELAY_WELDED,
  /** The heater element is open: no current, no heat. */
  HEATER_OPEN,
  /** The heater-current sense reads no current, whatever flows. */
  HEATER_CURRENT_SENSE_DEAD,
  /** The generator does not run and reports a fault. */
  GENERATOR_DEAD,
  /** Nothing passes the open drain. */
  DRAIN_BLOCKED,
  /** The drain valve does not move. */
  DRAIN_VALVE_STUCK,
  /** The drain leaks although it is closed. */
  DRAIN_LEAKING,
  /** The millisecond counter stands still. */
  CLOCK_STALLED,
  /** Mains is absent. */
  MAINS_CUT;

  private final String key = name().toLowerCase(Locale.ROOT).replace('_', '-');

  /** Name in scenario files, for example {@code control-sensor-open}. */
  public String key() {
    return key;
  }
}
