package dev.tankwright.plant.bath;

import dev.tankwright.plant.properties.Torricelli;

/**
 * Rates of change of the bath's state. Every exchange between two nodes is taken from the one and
 * given to the other as the same number, and what crosses the boundary is added to a ledger, so
 * that energy and mass are conserved by construction. No allocation.
 *
 * <p>Gas: under ultrasound dC/dt = −k (C − Cq) (form: Rozenberg 1973, in Physical Principles of
 * Ultrasonic Technology); at rest transfer through the surface, dC/dt = kL A / V (Cs − C); above
 * saturation bubbles carry the excess away, sooner under ultrasound, which shakes them loose. k,
 * Cq, kL and the bubbles' rates are estimates, see {@link GasRates}.
 *
 * <p>The last tenth of a millimetre clings to the tank: outflow and evaporation fade with it, so
 * that the tank dries out smoothly and no step can take more than there is.
 */
public final class BathEquations {
  private static final double LITRES = 1000;
  private static final double SMALLEST_CAPACITY = 1;
  private static final double FILM_METRES = 1e-4;

  // Streaming under full drive adds this many times the transfer of still water at the heated wall
  // and at the load: an estimate, 1–3.
  private static final double SOUND_GAIN = 2;

  // Ultrasound makes an excess bubble out this many times faster, less 1: an estimate, 5–20.
  private static final double SOUND_BUBBLES = 10;

  // What a load lifted out of the bath gives to the air, by what it takes up under water: an
  // estimate, 0.01–0.05.
  private static final double AIR_SHARE = 0.02;

  private final Geometry geometry;
  private final GasRates gas;
  private final double filmLitres;
  private final double surfaceLitresPerSecond;
  private final double perFilm;
  private final double perCovered;
  private final double perHeater;
  private final double perWall;
  private final double perLoad;
  private final double perLid;

  /**
   * Makes the equations of one bath.
   *
   * @param loadCapacity heat capacity of the load, J/K, above 0; without a load any value serves
   */
  public BathEquations(Geometry geometry, GasRates gas, double loadCapacity) {
    this.geometry = geometry;
    this.gas = gas;
    filmLitres = FILM_METRES * geometry.tank().surfaceSquareMetres() * LITRES;
    perFilm = 1 / filmLitres;
    perCovered = 1 / geometry.tank().coveredLitres();
    perHeater = 1 / geometry.capacities().heater();
    perWall = 1 / geometry.capacities().wall();
    perLoad = 1 / loadCapacity;
    perLid = 1 / geometry.capacities().lid();
    surfaceLitresPerSecond =
        gas.surfaceMetresPerSecond() * geometry.tank().surfaceSquareMetres() * LITRES;
  }

  /**
   * Works out the rates.
   *
   * @param y state, see {@link BathState}
   * @param u what acts from outside
   * @param k coefficients
   * @param rate where the rates go, per second
   */
  public void rates(double[] y, Surroundings u, Coefficients k, double[] rate) {
    double mass = Math.max(0, y[BathState.MASS]);
    double litres = mass / k.density * LITRES;
    double wet = wetShare(litres);
    double liquid = liquidCelsius(y, k);
    double wall = y[BathState.WALL] * perWall;
    double heater = y[BathState.HEATER] * perHeater;
    double load = y[BathState.LOAD] * perLoad;
    double lid = y[BathState.LID] * perLid;

    double heaterToWall = geometry.heaterToWall() * (heater - wall);
    double stirred = wet * (1 + SOUND_GAIN * u.driveShare);
    double wallToLiquid = k.wallToLiquid * stirred * (wall - liquid);
    double wallToRoom = k.wallToRoom * (1 - wet) * (wall - u.roomCelsius);
    double liquidToLoad = u.loadIn ? k.liquidToLoad * stirred * (liquid - load) : 0;
    double loadToRoom = u.loadIn ? 0 : k.liquidToLoad * AIR_SHARE * (load - u.roomCelsius);
    double sides = k.sidesToRoom * (liquid - u.roomCelsius);
    double surfaceToLid = k.surfaceToLid * (liquid - lid);
    double surfaceToRoom = k.surfaceToRoom * (liquid - u.roomCelsius);
    double lidToRoom = k.lidToRoom * (lid - u.roomCelsius);

    double filmShare = Math.min(1, litres * perFilm);
    double vapour = k.evaporation * filmShare;
    double vapourEnergy = vapour * (k.latentHeat + k.specificHeat * liquid);
    double drained = filmShare * drainKilogramsPerSecond(mass, u.drainOpening, k);
    double drainedEnergy = drained * k.specificHeat * liquid;

    rate[BathState.HEATER] = u.heaterWatts - heaterToWall;
    rate[BathState.WALL] = heaterToWall + u.transducerWatts - wallToLiquid - wallToRoom;
    rate[BathState.LIQUID] =
        wallToLiquid
            + u.soundWatts
            - liquidToLoad
            - sides
            - surfaceToLid
            - surfaceToRoom
            - vapourEnergy
            - drainedEnergy;
    rate[BathState.LOAD] = liquidToLoad - loadToRoom;
    rate[BathState.LID] = surfaceToLid - lidToRoom;
    rate[BathState.MASS] = -vapour - drained;
    rate[BathState.SUPPLIED] = u.heaterWatts + u.soundWatts + u.transducerWatts;
    rate[BathState.LOST] = wallToRoom + loadToRoom + sides + surfaceToRoom + lidToRoom;
    rate[BathState.VAPOUR_ENERGY] = vapourEnergy;
    rate[BathState.DRAIN_ENERGY] = drainedEnergy;
    rate[BathState.VAPOUR_MASS] = vapour;
    rate[BathState.DRAIN_MASS] = drained;
    double through = surfaceLitresPerSecond / Math.max(filmLitres, litres);
    double washed = drained > 0 ? drained / mass : 0;
    rate[BathState.OXYGEN] =
        gasRate(y[BathState.OXYGEN], k.oxygenSaturation, litres, through, washed, u);
    rate[BathState.NITROGEN] =
        gasRate(y[BathState.NITROGEN], k.nitrogenSaturation, litres, through, washed, u);
  }

  private double gasRate(
      double milligrams,
      double saturation,
      double litres,
      double through,
      double washed,
      Surroundings u) {
    double atSaturation = saturation * litres;
    double excess = milligrams - atSaturation;
    double rate = -through * excess - washed * milligrams;
    if (excess > 0) {
      rate -= gas.bubblesPerSecond() * (1 + SOUND_BUBBLES * u.driveShare) * excess;
    }
    double aboveQuasi = milligrams - gas.quasiEquilibrium() * atSaturation;
    return rate - gas.degasPerSecond() * u.driveShare * aboveQuasi;
  }

  private double drainKilogramsPerSecond(double mass, double opening, Coefficients k) {
    if (opening <= 0 || mass <= 0) {
      return 0;
    }
    double height = mass / k.density / geometry.tank().surfaceSquareMetres();
    double speed = Torricelli.metresPerSecond(height);
    return k.discharge * geometry.drainSquareMetres() * opening * speed * k.density;
  }

  /** Share of the heated wall that is wet, 0–1. */
  public double wetShare(double litres) {
    return Math.min(1, litres * perCovered);
  }

  /** Temperature of the liquid, °C. */
  public double liquidCelsius(double[] y, Coefficients k) {
    double capacity =
        geometry.capacities().tank() + Math.max(0, y[BathState.MASS]) * k.specificHeat;
    return y[BathState.LIQUID] / Math.max(SMALLEST_CAPACITY, capacity);
  }
}
