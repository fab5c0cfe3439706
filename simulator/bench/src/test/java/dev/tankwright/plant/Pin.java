package dev.tankwright.plant;

import dev.tankwright.controller.board.Inputs;

/** What can be seen of a plant from outside: the board's pins, and the physics behind them. */
enum Pin {
  CLOCK,
  CONTROL_SENSOR,
  CUT_OFF_SENSOR,
  LID_MAKE,
  LID_BREAK,
  MINIMUM,
  FILL_MARK,
  DRAIN_OPEN_END,
  DRAIN_CLOSED_END,
  HEATER_CURRENT,
  GENERATOR_RUNNING,
  GENERATOR_FAULT,
  MAINS,
  HEATER_WATTS,
  SOUND_WATTS,
  VOLUME,
  LAST_LINE;

  double of(Plant plant, Inputs pins) {
    return switch (this) {
      case CLOCK -> pins.millis;
      case CONTROL_SENSOR -> pins.controlSensorCounts;
      case CUT_OFF_SENSOR -> pins.cutOffSensorCounts;
      case LID_MAKE -> number(pins.lidMakeContact());
      case LID_BREAK -> number(pins.lidBreakContact());
      case MINIMUM -> number(pins.minimumLevelWet());
      case FILL_MARK -> number(pins.fillMarkWet());
      case DRAIN_OPEN_END -> number(pins.drainOpenEnd());
      case DRAIN_CLOSED_END -> number(pins.drainClosedEnd());
      case HEATER_CURRENT -> number(pins.heaterCurrent());
      case GENERATOR_RUNNING -> number(pins.generatorRunning());
      case GENERATOR_FAULT -> number(pins.generatorFault());
      case MAINS -> number(pins.mainsPresent());
      case HEATER_WATTS -> plant.heaterWatts();
      case SOUND_WATTS -> plant.soundWatts();
      case VOLUME -> plant.litres();
      case LAST_LINE -> number(plant.isLimiterTripped());
    };
  }

  private static double number(boolean on) {
    return on ? 1 : 0;
  }
}
