package dev.tankwright.plant.bath;

/**
 * The bath over time: fixed steps of 100 ms by {@link RungeKutta4}; coefficients are recomputed
 * every 40 steps (4 s) and when the lid moves. It moves only in whole steps, so how a run is split
 * into calls changes nothing. No allocation per step.
 */
public final class Bath {
  /** Length of a step, s. */
  public static final double STEP_SECONDS = 0.1;

  private static final int STEPS_PER_COEFFICIENTS = 40;
  private static final double LITRES = 1000;

  // Stainless steel, J/(kg K), from memory; a load of nothing keeps a capacity that divides well.
  private static final double STEEL_SPECIFIC_HEAT = 500;
  private static final double SMALLEST_LOAD = 1e-3;

  private final Geometry geometry;
  private final BathEquations equations;
  private final Correlations correlations;
  private final RungeKutta4 integrator;
  private final Coefficients coefficients = new Coefficients();
  private final double loadCapacity;
  private final BathObserver observer;
  private final Ledger ledger;
  private final double[] y = new double[BathState.SIZE];
  private int stepsToCoefficients;
  private boolean lidWasOff;

  /**
   * Makes a bath in thermal rest.
   *
   * @param loadKilograms mass of the load, kg, at least 0
   * @param start initial state
   * @param observer told of every step, {@link BathObserver#NONE} for none
   */
  public Bath(
      Geometry geometry, GasRates gas, double loadKilograms, Start start, BathObserver observer) {
    loadCapacity = Math.max(SMALLEST_LOAD, loadKilograms) * STEEL_SPECIFIC_HEAT;
    this.geometry = geometry;
    this.observer = observer;
    equations = new BathEquations(geometry, gas, loadCapacity);
    correlations = new Correlations(geometry, loadKilograms);
    integrator = new RungeKutta4(equations);
    y[BathState.HEATER] = geometry.capacities().heater() * start.celsius();
    y[BathState.WALL] = geometry.capacities().wall() * start.celsius();
    y[BathState.LOAD] = loadCapacity * start.roomCelsius();
    y[BathState.LID] = geometry.capacities().lid() * start.roomCelsius();
    correlations.fillProperties(start.celsius(), coefficients);
    y[BathState.MASS] = start.litres() / LITRES * coefficients.density;
    y[BathState.LIQUID] =
        (geometry.capacities().tank() + y[BathState.MASS] * coefficients.specificHeat)
            * start.celsius();
    y[BathState.OXYGEN] = start.gasSaturation() * coefficients.oxygenSaturation * start.litres();
    y[BathState.NITROGEN] =
        start.gasSaturation() * coefficients.nitrogenSaturation * start.litres();
    ledger = new Ledger(y);
  }

  /**
   * Initial state of a bath.
   *
   * @param litres volume, L
   * @param celsius temperature of tank and liquid, °C
   * @param roomCelsius temperature of the room, of the load and of the lid, °C
   * @param gasSaturation dissolved gas as a fraction of saturation
   */
  public record Start(double litres, double celsius, double roomCelsius, double gasSaturation) {}

  /** Moves on by one step. */
  public void step(Surroundings u) {
    if (stepsToCoefficients == 0 || u.lidOff != lidWasOff) {
      correlations.fill(y, equations, u, coefficients);
      stepsToCoefficients = STEPS_PER_COEFFICIENTS;
      lidWasOff = u.lidOff;
    }
    stepsToCoefficients--;
    integrator.step(y, u, coefficients, STEP_SECONDS);
    observer.stepped(u, y);
  }

  /**
   * Pours liquid in, saturated with air at its temperature.
   *
   * @param litres how much, L
   * @param celsius how warm, °C
   */
  public void pour(double litres, double celsius) {
    correlations.fillProperties(celsius, coefficients);
    double mass = litres / LITRES * coefficients.density;
    double energy = mass * coefficients.specificHeat * celsius;
    y[BathState.MASS] += mass;
    y[BathState.LIQUID] += energy;
    ledger.pour(energy, mass);
    y[BathState.OXYGEN] += coefficients.oxygenSaturation * litres;
    y[BathState.NITROGEN] += coefficients.nitrogenSaturation * litres;
    correlations.fillProperties(liquidCelsius(), coefficients);
    stepsToCoefficients = 0;
    observer.jumped(y);
  }

  /**
   * Takes liquid out with the load, or by evaporation elsewhere: it leaves with its energy and gas,
   * as through the drain.
   */
  public void carryOut(double kilograms) {
    double mass = y[BathState.MASS];
    double taken = Math.min(kilograms, mass);
    if (taken <= 0) {
      return;
    }
    double energy = taken * coefficients.specificHeat * liquidCelsius();
    y[BathState.MASS] -= taken;
    y[BathState.LIQUID] -= energy;
    y[BathState.DRAIN_MASS] += taken;
    y[BathState.DRAIN_ENERGY] += energy;
    double left = (mass - taken) / mass;
    y[BathState.OXYGEN] *= left;
    y[BathState.NITROGEN] *= left;
    observer.jumped(y);
  }

  /**
   * A fresh load of the same mass, at the room's temperature, takes the place of the one before,
   * whose energy leaves with it.
   */
  public void renewLoad(double roomCelsius) {
    double fresh = loadCapacity * roomCelsius;
    y[BathState.LOST] += y[BathState.LOAD] - fresh;
    y[BathState.LOAD] = fresh;
    observer.jumped(y);
  }

  /** What went in, what went out and what stayed since the start. */
  public Balance balance() {
    return ledger.balance(y);
  }

  /** Temperature of the liquid, °C. */
  public double liquidCelsius() {
    return equations.liquidCelsius(y, coefficients);
  }

  /** Temperature of the heated wall, °C. */
  public double wallCelsius() {
    return y[BathState.WALL] / geometry.capacities().wall();
  }

  /** Temperature of the load, °C. */
  public double loadCelsius() {
    return y[BathState.LOAD] / loadCapacity;
  }

  /** Volume of the liquid, L. */
  public double litres() {
    return y[BathState.MASS] / coefficients.density * LITRES;
  }

  /**
   * Dissolved oxygen and nitrogen together, each as a fraction of its saturation, weighted by it.
   */
  public double gasSaturation() {
    double saturated =
        (coefficients.oxygenSaturation + coefficients.nitrogenSaturation)
            * Math.max(1e-9, litres());
    return (y[BathState.OXYGEN] + y[BathState.NITROGEN]) / saturated;
  }

  /** The state, see {@link BathState}; a copy. */
  public double[] state() {
    return y.clone();
  }
}
