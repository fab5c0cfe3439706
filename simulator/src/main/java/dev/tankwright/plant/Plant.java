package dev.tankwright.plant;

import dev.tankwright.controller.board.Inputs;
import dev.tankwright.controller.board.Outputs;
import dev.tankwright.plant.bath.Bath;
import dev.tankwright.plant.bath.Surroundings;

/**
 * The bath and its parts: driven by the board's outputs, seen by its inputs. One step is one scan
 * of the controller; the electrics move in every step, the bath's physics in every tenth with the
 * mean of what drove it. No allocation per step; the same seed gives the same run. Not thread-safe.
 */
public final class Plant {
  /** Length of a step, ms. */
  public static final int STEP_MILLIS = 10;

  private static final double STEP_SECONDS = STEP_MILLIS / 1000.0;
  private static final double LEAK_SHARE = 0.25;

  // Solution that clings to basket and load when they are lifted out: an estimate, 10–100 g.
  private static final double CARRIED_KILOGRAMS = 0.03;

  private static final int BATH_STEPS = (int) Math.round(Bath.STEP_SECONDS / STEP_SECONDS);

  private final BathProfile profile;
  private final Breakages broken = new Breakages();
  private final Supply supply = new Supply();
  private final Bath bath;
  private final Surroundings surroundings = new Surroundings();
  private final MeanDrive drive = new MeanDrive();
  private final Effects effects;
  private final double loadKilograms;
  private final HeaterCircuit heater;
  private final SoundCircuit sound;
  private final DrainValve valve = new DrainValve(STEP_SECONDS);
  private final SensorChain controlSensor;
  private final SensorChain cutOffSensor;
  private final Contact lidMake;
  private final Contact lidBreak;
  private boolean lidOpen;
  private double liquidCelsius;
  private double litres;
  private int stalledMillis;

  /**
   * Makes a bath with its lid closed and nothing running.
   *
   * @param seed seed of all chance
   */
  public Plant(BathProfile profile, BathStart start, long seed) {
    this.profile = profile;
    Noise noise = new Noise(seed);
    bath =
        new Bath(
            profile.geometry(),
            profile.gas(),
            start.load().kilograms(),
            new Bath.Start(
                start.litres(), start.celsius(), start.ambientCelsius(), start.gasSaturation()));
    surroundings.roomCelsius = start.ambientCelsius();
    surroundings.roomHumidity = start.humidity();
    loadKilograms = start.load().kilograms();
    surroundings.loadIn = loadKilograms > 0;
    effects = new Effects(profile.powers(), profile.effects(), start);
    heater = new HeaterCircuit(profile.powers().heaterWatts());
    sound = new SoundCircuit(profile.powers());
    controlSensor =
        new SensorChain(profile.sensors().controlTau(), STEP_SECONDS, start.celsius(), noise);
    cutOffSensor =
        new SensorChain(profile.sensors().cutOffTau(), STEP_SECONDS, start.celsius(), noise);
    lidMake = new Contact(true, noise);
    lidBreak = new Contact(false, noise);
    look();
  }

  /** Breaks a part by as much as the size says in the fault's own unit. */
  public void breakPart(PartFault fault, double size) {
    broken.set(fault, true, size);
  }

  /** Mends a part. */
  public void mendPart(PartFault fault) {
    broken.set(fault, false, 0);
  }

  /** Moves the lid. */
  public void moveLid(boolean open) {
    lidOpen = open;
  }

  /**
   * Pours solution in; what does not fit runs over the brim.
   *
   * @param poured volume, L
   * @param celsius temperature, °C
   * @param detergent share of the right detergent in it, 0–1
   */
  public void pour(double poured, double celsius, double detergent) {
    double taken = Math.min(poured, Math.max(0, profile.levels().brimLitres() - litres));
    effects.mix(litres, taken, detergent);
    bath.pour(taken, celsius);
    look();
  }

  /**
   * Moves the basket. Lifting it out of the solution takes some of it along; a basket that hangs
   * where it is moved to stays there, but {@link BasketMove#FRESH} always brings another load.
   */
  public void moveBasket(BasketMove move) {
    if (surroundings.loadIn && move != BasketMove.IN) {
      bath.carryOut(CARRIED_KILOGRAMS);
    }
    if (move == BasketMove.FRESH) {
      bath.renewLoad(surroundings.roomCelsius, loadKilograms);
      effects.soil().renew();
    }
    surroundings.loadIn = move != BasketMove.OUT && loadKilograms > 0;
    look();
  }

  /** Hangs three fresh pieces of foil into the bath. */
  public void hangFoil() {
    effects.foil().hang();
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
    inputs.mainsPresent = supply.isPresent();
  }

  private void readContacts(Inputs inputs) {
    inputs.lidMakeContact =
        lidMake.read(!lidOpen) && !broken.has(PartFault.LID_MAKE_CONTACT_BROKEN);
    inputs.lidBreakContact =
        lidBreak.read(lidOpen) || broken.has(PartFault.LID_BREAK_CONTACT_WELDED);
    inputs.minimumLevelWet =
        (!isLevelLow() || broken.has(PartFault.MINIMUM_LEVEL_STUCK_WET))
            && !broken.has(PartFault.MINIMUM_LEVEL_STUCK_DRY);
    inputs.fillMarkWet = litres >= profile.levels().fillMarkLitres();
    inputs.drainOpenEnd = valve.isAtOpenEnd();
    inputs.drainClosedEnd = valve.isAtClosedEnd();
  }

  /** Lets one step pass under the given outputs. */
  public void step(Outputs outputs) {
    supply.step(broken);
    heater.step(outputs, broken, supply, bath.wallCelsius());
    sound.step(outputs, broken, supply);
    valve.step(outputs.drainValveOpen, broken.has(PartFault.DRAIN_VALVE_STUCK));
    drive.add(heater, sound, opening());
    if (drive.scans() == BATH_STEPS) {
      stepBath();
    }
    controlSensor.step(liquidCelsius);
    cutOffSensor.step(liquidCelsius);
  }

  private double opening() {
    double leak = broken.has(PartFault.DRAIN_LEAKING) ? LEAK_SHARE : 0;
    return Math.max(broken.has(PartFault.DRAIN_BLOCKED) ? 0 : valve.opening(), leak);
  }

  private void stepBath() {
    drive.into(surroundings);
    surroundings.lidOff = lidOpen;
    bath.step(surroundings);
    look();
    effects.step(bath, surroundings.driveShare, surroundings.loadIn, Bath.STEP_SECONDS);
  }

  private void look() {
    liquidCelsius = bath.liquidCelsius();
    litres = bath.litres();
  }

  /** True temperature of the solution, °C. */
  public double liquidCelsius() {
    return liquidCelsius;
  }

  /** True temperature of the heated wall, °C. */
  public double wallCelsius() {
    return bath.wallCelsius();
  }

  /** Volume in the tank, L. */
  public double litres() {
    return litres;
  }

  /** True while the solution stands below the minimum for heating and sounding. */
  public boolean isLevelLow() {
    return litres < profile.levels().minimumLitres();
  }

  /** Dissolved gas as a fraction of saturation at the present temperature. */
  public double gasSaturation() {
    return bath.gasSaturation();
  }

  /** Cavitation activity index, 0–1; 0 while the generator is silent. */
  public double activity() {
    return sound.isRunning() ? effects.index() : 0;
  }

  /** Temperature of the load, °C; the room's while there is none. */
  public double loadCelsius() {
    return bath.loadCelsius();
  }

  /** Share of the load's soil that is left, 0–1. */
  public double soilLeft() {
    return effects.soil().left();
  }

  /** Pits on the piece of foil that shows most; 0 while none was hung. */
  public double foilPits() {
    return effects.foil().mostPits();
  }

  /** Holes in the piece of foil that shows most; 0 while none was hung. */
  public double foilHoles() {
    return effects.foil().mostHoles();
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
    return heater.isLastLineOpen();
  }
}
