package dev.tankwright.report.trace;

import dev.tankwright.loop.Signal;
import java.util.Locale;

/** Groups of signals in a value change dump, in the order in which they are declared. */
public enum VcdScope {
  /** What is true of the bath. */
  BATH,
  /** What the load and a piece of foil show. */
  LOAD,
  /** Supply and parts. */
  PARTS,
  /** What the controller drives. */
  OUTPUTS,
  /** What the controller knows and shows. */
  PANEL,
  /** What is judged from outside. */
  RULES;

  /** Name in the dump. */
  public String key() {
    return name().toLowerCase(Locale.ROOT);
  }

  static VcdScope of(Signal signal) {
    return switch (signal) {
      case LIQUID_TEMPERATURE,
          WALL_TEMPERATURE,
          VOLUME,
          DISSOLVED_GAS,
          ACTIVITY,
          LID_OPEN,
          LEVEL_LOW,
          HEATER_POWER,
          ULTRASOUND_POWER ->
          BATH;
      case LOAD_TEMPERATURE, SOIL_LEFT, FOIL_PITS, FOIL_HOLES -> LOAD;
      case MAINS_VOLTAGE, LIMITER_TRIPPED, PART_BROKEN, BOARD_SUPPLIED -> PARTS;
      case HEATER, CUT_OFF_RELAY, ULTRASOUND, DRIVE_LEVEL, DRAIN_VALVE, BUZZER -> OUTPUTS;
      case MEASURED_TEMPERATURE,
          SETPOINT,
          DEGAS_OWED,
          SOLUTION_DUE,
          DRAIN_DUE,
          FOIL_CHECK_DUE,
          KEEPING_WARM,
          REMAINING_TIME,
          PHASE,
          FAULT,
          REFUSAL ->
          PANEL;
      case BROKEN_RULE -> RULES;
    };
  }
}
