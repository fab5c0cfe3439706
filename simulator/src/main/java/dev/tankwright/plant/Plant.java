package dev.tankwright.plant;

import dev.tankwright.controller.board.Inputs;
import dev.tankwright.controller.board.Outputs;

/**
 * The bath and its parts: driven by the board's outputs, seen by its inputs. One step is one scan
 * of the controller. Values that change over minutes (gas, evaporation, the activity index) are
 * worked out ten times a second. No allocation per step; the same seed gives the same run. Not
 * thread-safe.
 */
public final class Plant {
  /** Length of a step, ms. */
  public static final int STEP_MILLIS = 10;

  private static final double STEP_SECONDS = STEP_MILLIS / 1000.0;
  private static final int SLOW_STEPS = 10;

  private final BathProfile profile;
  private final Breakages broken = new Breakages();
  private final Liquid liquid;
  private final Warmth warmth;
  private final Gas gas;
  private final HeaterCircuit heater;
  private final SoundCircuit sound;
  private final DrainValve valve = new DrainValve(STEP_SECONDS);
  private final SensorChain controlSensor;
  private final SensorChain cutOffSensor;
  private final Contact lidMake;
  private final Contact lidBreak;
  private int slowSteps;
  private double activity;
  private boolean lidOpen;
  private int stalledMillis;

  /**
   * Makes a bath with its lid closed and nothing running.
   *
   * @param seed seed of all chance
   */
  public Plant(BathProfile profile, BathStart start, long seed) {
    this.profile = profile;
    Noise noise = new Noise(seed);
    liquid = new Liquid(profile, start.litres());
    warmth = new Warmth(profile, start);
    gas = new Gas(start);
    heater = new HeaterCircuit(profile.heaterWatts());
    sound = new SoundCircuit(profile);
    controlSensor =
        new SensorChain(profile.controlSensorTau(), STEP_SECONDS, start.celsius(), noise);
    cutOffSensor = new SensorChain(profile.cutOffSensorTau(), STEP_SECONDS, start.celsius(), noise);
    lidMake = new Contact(true, noise);
    lidBreak = new Contact(false, noise);
  }

  /** Breaks or mends a part. */
  public void set(PartFault fault, boolean isBroken) {
    broken.set(fault, isBroken);
  }

  /** Moves the lid. */
  public void moveLid(boolean open) {
    lidOpen = open;
  }

  /** Pours solution in. */
  public void pour(double litres, double celsius) {
    double before = liquid.litres();
    double stayed = liquid.pour(litres);
    warmth.mix(stayed, celsius, before);
    gas.mix(stayed, celsius, before);
  }

  /**
   * Shows the bath to the board's pins.
   *
   * @param millis the board's free-running counter
   */
  public void read(Inputs inputs, int millis) {
    stalledMillis = broken.has(PartFault.CLOCK_STALLED) ? stalledMillis : millis;
    inputs.millis = stalledMillis;
    inputs.controlSensorCounts =
        controlSensor.read(
            broken.has(PartFault.CONTROL_SENSOR_OPEN),
            broken.has(PartFault.CONTROL_SENSOR_SHORT),
            broken.has(PartFault.CONTROL_SENSOR_STUCK));
    inputs.cutOffSensorCounts =
        cutOffSensor.read(
            broken.has(PartFault.CUT_OFF_SENSOR_OPEN),
            broken.has(PartFault.CUT_OFF_SENSOR_SHORT),
            false);
    readContacts(inputs);
    inputs.heaterCurrent = heater.isSensed(broken);
    inputs.generatorRunning = sound.isRunning();
    inputs.generatorFault = sound.isFaulty();
    inputs.mainsPresent = !broken.has(PartFault.MAINS_CUT);
  }

  private void readContacts(Inputs inputs) {
    inputs.lidMakeContact =
        lidMake.read(!lidOpen) && !broken.has(PartFault.LID_MAKE_CONTACT_BROKEN);
    inputs.lidBreakContact =
        lidBreak.read(lidOpen) || broken.has(PartFault.LID_BREAK_CONTACT_WELDED);
    inputs.minimumLevelWet =
        (liquid.isAboveMinimum() || broken.has(PartFault.MINIMUM_LEVEL_STUCK_WET))
            && !broken.has(PartFault.MINIMUM_LEVEL_STUCK_DRY);
    inputs.fillMarkWet = liquid.isAboveFillMark();
    inputs.drainOpenEnd = valve.isAtOpenEnd();
    inputs.drainClosedEnd = valve.isAtClosedEnd();
  }

  /** Lets one step pass under the given outputs. */
  public void step(Outputs outputs) {
    heater.step(outputs, broken, warmth.wallCelsius());
    sound.step(outputs, broken);
    valve.step(outputs.drainValveOpen, broken.has(PartFault.DRAIN_VALVE_STUCK));
    double opening = broken.has(PartFault.DRAIN_BLOCKED) ? 0 : valve.opening();
    liquid.drain(opening, broken.has(PartFault.DRAIN_LEAKING), STEP_SECONDS);
    if (slowSteps == 0) {
      stepSlowly();
    }
    slowSteps = slowSteps == SLOW_STEPS - 1 ? 0 : slowSteps + 1;
    warmth.step(heater.watts(), sound.liquidWatts(), liquid, lidOpen, STEP_SECONDS);
    controlSensor.step(warmth.liquidCelsius());
    cutOffSensor.step(warmth.liquidCelsius());
  }

  private void stepSlowly() {
    double seconds = SLOW_STEPS * STEP_SECONDS;
    double celsius = warmth.liquidCelsius();
    warmth.updateEvaporation(lidOpen, liquid.litres() > 0);
    liquid.evaporate(warmth.evaporationKilogramsPerSecond() * seconds);
    gas.step(celsius, sound.driveShare(), seconds);
    double density =
        profile.ultrasoundWatts() * sound.driveShare() / Math.max(0.1, liquid.litres());
    activity = Activity.index(density, gas.saturation(), celsius);
  }

  /** True temperature of the solution, °C. */
  public double liquidCelsius() {
    return warmth.liquidCelsius();
  }

  /** True temperature of the heated wall, °C. */
  public double wallCelsius() {
    return warmth.wallCelsius();
  }

  /** Volume in the tank, L. */
  public double litres() {
    return liquid.litres();
  }

  /** True while the solution stands below the minimum for heating and sounding. */
  public boolean isLevelLow() {
    return !liquid.isAboveMinimum();
  }

  /** Dissolved gas as a fraction of saturation at the present temperature. */
  public double gasSaturation() {
    return gas.saturation();
  }

  /** Cavitation activity index, 0–1; 0 while the generator is silent. */
  public double activity() {
    return sound.isRunning() ? activity : 0;
  }

  /** Power that the heater turns into heat, W. */
  public double heaterWatts() {
    return heater.watts();
  }

  /** Power that the ultrasound brings into the liquid, W. */
  public double soundWatts() {
    return sound.liquidWatts();
  }

  /** True when the lid is open. */
  public boolean isLidOpen() {
    return lidOpen;
  }

  /** True once the hardware's limiter has opened the heater circuit for good. */
  public boolean isLimiterTripped() {
    return heater.isLimiterTripped();
  }
}
