package dev.tankwright.timeline;

import dev.tankwright.loop.Signal;

/**
 * Every signal under the name that scenario files give it, in Java's spelling: {@code lid-open} is
 * {@code lidOpen()}. Stateless.
 */
public final class Signals {
  private Signals() {}

  /** True temperature of the solution. */
  public static NumberSignal liquidTemperature() {
    return new NumberSignal(Signal.LIQUID_TEMPERATURE);
  }

  /** True temperature of the tank's wall. */
  public static NumberSignal wallTemperature() {
    return new NumberSignal(Signal.WALL_TEMPERATURE);
  }

  /** Temperature as the controller has it from the control sensor. */
  public static NumberSignal measuredTemperature() {
    return new NumberSignal(Signal.MEASURED_TEMPERATURE);
  }

  /** Setpoint of the cycle, 0 outside a cycle. */
  public static NumberSignal setpoint() {
    return new NumberSignal(Signal.SETPOINT);
  }

  /** Volume in the tank. */
  public static NumberSignal volume() {
    return new NumberSignal(Signal.VOLUME);
  }

  /** Dissolved gas, 1 at saturation. */
  public static NumberSignal dissolvedGas() {
    return new NumberSignal(Signal.DISSOLVED_GAS);
  }

  /** Cavitation activity index, 0–1. */
  public static NumberSignal activity() {
    return new NumberSignal(Signal.ACTIVITY);
  }

  /** Temperature of the load; the room's while there is none. */
  public static NumberSignal loadTemperature() {
    return new NumberSignal(Signal.LOAD_TEMPERATURE);
  }

  /** Soil left on the load, as a share of what it was hung in with. */
  public static NumberSignal soilLeft() {
    return new NumberSignal(Signal.SOIL_LEFT);
  }

  /** Pits on the piece of foil that shows most. */
  public static NumberSignal foilPits() {
    return new NumberSignal(Signal.FOIL_PITS);
  }

  /** Holes in the piece of foil that shows most. */
  public static NumberSignal foilHoles() {
    return new NumberSignal(Signal.FOIL_HOLES);
  }

  /** Power that the heater turns into heat. */
  public static NumberSignal heaterPower() {
    return new NumberSignal(Signal.HEATER_POWER);
  }

  /** Power that the ultrasound brings into the bath. */
  public static NumberSignal ultrasoundPower() {
    return new NumberSignal(Signal.ULTRASOUND_POWER);
  }

  /** Mains voltage as a share of its nominal value. */
  public static NumberSignal mainsVoltage() {
    return new NumberSignal(Signal.MAINS_VOLTAGE);
  }

  /** The heater relay is commanded closed. */
  public static SwitchSignal heater() {
    return new SwitchSignal(Signal.HEATER);
  }

  /** The series relay of the cut-off is commanded closed. */
  public static SwitchSignal cutOffRelay() {
    return new SwitchSignal(Signal.CUT_OFF_RELAY);
  }

  /** The generator is enabled. */
  public static SwitchSignal ultrasound() {
    return new SwitchSignal(Signal.ULTRASOUND);
  }

  /** Drive level of the generator. */
  public static NumberSignal driveLevel() {
    return new NumberSignal(Signal.DRIVE_LEVEL);
  }

  /** The drain valve is commanded open. */
  public static SwitchSignal drainValve() {
    return new SwitchSignal(Signal.DRAIN_VALVE);
  }

  /** The buzzer sounds. */
  public static SwitchSignal buzzer() {
    return new SwitchSignal(Signal.BUZZER);
  }

  /** The lid is truly open. */
  public static SwitchSignal lidOpen() {
    return new SwitchSignal(Signal.LID_OPEN);
  }

  /** The solution truly stands below the minimum for heating and sounding. */
  public static SwitchSignal levelLow() {
    return new SwitchSignal(Signal.LEVEL_LOW);
  }

  /** The hardware's own limiter has opened the heater circuit for good. */
  public static SwitchSignal limiterTripped() {
    return new SwitchSignal(Signal.LIMITER_TRIPPED);
  }

  /** Any part is broken now, or the operator is out of order. */
  public static SwitchSignal partBroken() {
    return new SwitchSignal(Signal.PART_BROKEN);
  }

  /** The board has its supply; without it nothing is driven, and the panel shows nothing. */
  public static SwitchSignal boardSupplied() {
    return new SwitchSignal(Signal.BOARD_SUPPLIED);
  }

  /** The panel says that degassing is required. */
  public static SwitchSignal degasOwed() {
    return new SwitchSignal(Signal.DEGAS_OWED);
  }

  /** The panel says that the solution is older than it should be. */
  public static SwitchSignal solutionDue() {
    return new SwitchSignal(Signal.SOLUTION_DUE);
  }

  /** The panel says that the tank is to be drained and dried. */
  public static SwitchSignal drainDue() {
    return new SwitchSignal(Signal.DRAIN_DUE);
  }

  /** The panel says that the next foil check is due. */
  public static SwitchSignal foilCheckDue() {
    return new SwitchSignal(Signal.FOIL_CHECK_DUE);
  }

  /** The panel says that the solution is kept warm between two cycles. */
  public static SwitchSignal keepingWarm() {
    return new SwitchSignal(Signal.KEEPING_WARM);
  }

  /** What is left of degassing and cleaning, as the panel says. */
  public static NumberSignal remainingTime() {
    return new NumberSignal(Signal.REMAINING_TIME);
  }

  /** Phase of the controller. */
  public static WordSignal phase() {
    return new WordSignal(Signal.PHASE);
  }

  /** Most severe latched fault, or NONE. */
  public static WordSignal fault() {
    return new WordSignal(Signal.FAULT);
  }

  /** Reason of the last refused command, or NONE. */
  public static WordSignal refusal() {
    return new WordSignal(Signal.REFUSAL);
  }

  /** The rule of every scan that this scan breaks, or NONE. */
  public static WordSignal brokenRule() {
    return new WordSignal(Signal.BROKEN_RULE);
  }
}
