package dev.tankwright.plant;

import dev.tankwright.controller.board.Inputs;
import dev.tankwright.controller.board.Outputs;
import dev.tankwright.plant.bath.Balance;
import dev.tankwright.plant.bath.Bath;
import dev.tankwright.plant.bath.BathObserver;
import dev.tankwright.plant.bath.Surroundings;
import dev.tankwright.plant.effects.Foil;
import dev.tankwright.plant.effects.Soil;

/**
 * The bath and its parts: driven by the board's outputs, seen by its inputs. One step is one scan
 * of the controller; the electrics move in every step, the bath's physics in every tenth with the
 * mean of what drove it. No allocation per step; the same seed gives the same run. Not thread-safe.
 */
public final class Plant {
  /** Length of a step, ms. */
  public static final int STEP_MILLIS = 10;

  private static final double STEP_SECONDS = STEP_MILLIS / 1000.0;
  private static final long FAULT_SEED = 0x6A09E667F3BCC909L;

  // Solution that clings to basket and load when they are lifted out: an estimate, 10–100 g.
  private static final double CARRIED_KILOGRAMS = 0.03;

  private static final int BATH_STEPS = (int) Math.round(Bath.STEP_SECONDS / STEP_SECONDS);

  private final BathProfile profile;
  private final BrokenParts broken = new BrokenParts();
  private final Supply supply;
  private final Bath bath;
  private final Surroundings surroundings = new Surroundings();
  private final MeanDrive drive = new MeanDrive();
  private final Effects effects;
  private final double loadKilograms;
  private final HeaterCircuit heater;
  private final UltrasoundCircuit sound;
  private final DrainPath drain = new DrainPath(STEP_SECONDS);
  private final BoardClock clock = new BoardClock(STEP_MILLIS);
  private final Sensors sensors;
  private final LidContacts lid;
  private final LevelContacts level;
  private boolean lidOpen;
  private double liquidCelsius;
  private double litres;

  /**
   * Makes a bath with its lid closed and nothing running.
   *
   * @param seed seed of all chance
   */
  public Plant(BathProfile profile, BathStart start, long seed) {
    this(profile, start, seed, BathObserver.NONE);
  }

  /**
   * Makes a bath on which somebody looks.
   *
   * @param seed seed of all chance
   * @param observer called once per step of the physics
   */
  public Plant(BathProfile profile, BathStart start, long seed, BathObserver observer) {
    this.profile = profile;
    Noise noise = new Noise(seed);
    bath =
        new Bath(
            profile.geometry(),
            profile.gas(),
            start.load().kilograms(),
            new Bath.Start(
                start.litres(), start.celsius(), start.ambientCelsius(), start.gasSaturation()),
            observer);
    surroundings.roomCelsius = start.ambientCelsius();
    surroundings.roomHumidity = start.humidity();
    loadKilograms = start.load().kilograms();
    surroundings.loadIn = loadKilograms > 0;
    effects = new Effects(profile.powers(), profile.effects(), start);
    BathProfile.Deviations off = profile.deviations();
    supply = new Supply(STEP_SECONDS, off.mains());
    int relaySteps = off.relayDelayMillis() / STEP_MILLIS;
    heater = new HeaterCircuit(profile.powers().heaterWatts(), relaySteps);
    sound = new UltrasoundCircuit(profile.powers());
    Noise faultNoise = new Noise(seed ^ FAULT_SEED);
    sensors = new Sensors(profile.sensors(), off, STEP_SECONDS, start.celsius(), noise, faultNoise);
    lid = new LidContacts(noise, faultNoise);
    level = new LevelContacts(profile.levels());
    look();
  }

  /**
   * Breaks a part.
   *
   * @param size by how much, in the fault's own unit; 0 for a fault without a size
   * @throws IllegalArgumentException if the fault does not allow the size
   */
  public void breakPart(PartFault fault, double size) {
    if (!fault.allows(size)) {
      throw new IllegalArgumentException(
          fault.key()
              + " cannot have the size "
              + size
              + "; it must lie from "
              + fault.leastSize()
              + " to "
              + fault.mostSize()
              + (fault.measure() == PartFault.Measure.NONE ? "" : " and not be 0"));
    }
    broken.set(fault, true, size);
  }

  /** Repairs a part. */
  public void repairPart(PartFault fault) {
    broken.set(fault, false, 0);
  }

  /**
   * Cuts the mains of the whole device at once, or gives them back from the next step on, whatever
   * else is wrong with them.
   */
  public void cutMains(boolean away) {
    supply.cut(away);
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
      bath.renewLoad(surroundings.roomCelsius);
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
    inputs.millis = clock.read(millis, broken);
    sensors.read(inputs, broken);
    lid.read(inputs, lidOpen, broken);
    level.read(inputs, litres, broken);
    drain.read(inputs);
    inputs.heaterCurrent(heater.isSensed(broken));
    inputs.generatorRunning(sound.isRunning());
    inputs.generatorFault(sound.isFaulty());
    inputs.mainsPresent(supply.isPresent());
  }

  /** Lets one step pass under the given outputs. */
  public void step(Outputs outputs) {
    supply.step(broken);
    heater.step(outputs, broken, supply, bath.wallCelsius());
    sound.step(outputs, broken, supply);
    drive.add(heater, sound, drain.step(outputs.drainValveOpen, broken));
    if (drive.scans() == BATH_STEPS) {
      stepBath();
    }
    sensors.step(liquidCelsius);
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

  /** Energy and mass since the start. */
  public Balance balance() {
    return bath.balance();
  }

  /** The foil that hangs in the bath, if any. */
  public Foil foil() {
    return effects.foil();
  }

  /** The soil on the load. */
  public Soil soil() {
    return effects.soil();
  }

  /** True when the lid is open. */
  public boolean isLidOpen() {
    return lidOpen;
  }

  /** True once the hardware's limiter has opened the heater circuit for good. */
  public boolean isLimiterTripped() {
    return heater.isLastLineOpen();
  }

  /** True while a part of this name is broken. */
  public boolean isBroken(PartFault fault) {
    return broken.has(fault);
  }

  /** True while any part is broken. */
  public boolean isAnyBroken() {
    return !broken.none();
  }

  /** Size of a fault in its own unit; 0 while the part is whole. */
  public double faultSize(PartFault fault) {
    return broken.size(fault);
  }

  /** Mains voltage as a share of its nominal value. */
  public double mainsShare() {
    return supply.share();
  }
}
