package dev.tankwright.plant.bath;

/**
 * The bath in time: fixed steps of 100 ms by {@link RungeKutta4}, coefficients anew every second. Moves only in whole steps, so that how a run is cut into calls changes nothing. No allocation per
 * step.
 */
public final class Bath {
  /** Length of a step, s. */
  public static final double STEP_SECONDS = 0.1;

  private static final int STEPS_PER_COEFFICIENTS = 10;
  private static final double LITRES = 1000;

  private final Geometry geometry;
  private final BathEquations equations;
  private final Correlations correlations;
  private final RungeKutta4 integrator;
  private final Coefficients coefficients = new Coefficients();
  private final double[] y = new double[BathState.SIZE];
  private int stepsToCoefficients;

  /**
   * Makes a bath in thermal rest.
   *
   * @param loadCapacity heat capacity of the load, J/K
   * @param start how it stands
   */
  public Bath(Geometry geometry, GasRates gas, double loadCapacity, Start start) {
    this.geometry = geometry;
    equations = new BathEquations(geometry, gas, loadCapacity);
    correlations = new Correlations(geometry, loadCapacity);
    integrator = new RungeKutta4(equations);
    y[BathState.HEATER] = geometry.heaterCapacity() * start.celsius();
    y[BathState.WALL] = geometry.wallCapacity() * start.celsius();
    y[BathState.LOAD] = loadCapacity * start.roomCelsius();
    y[BathState.LID] = geometry.lidCapacity() * start.roomCelsius();
    correlations.fillProperties(start.celsius(), coefficients);
    y[BathState.MASS] = start.litres() / LITRES * coefficients.density;
    y[BathState.LIQUID] =
        (geometry.tankCapacity() + y[BathState.MASS] * coefficients.specificHeat) * start.celsius();
    y[BathState.OXYGEN] = start.gasSaturation() * coefficients.oxygenSaturation * start.litres();
    y[BathState.NITROGEN] = start.gasSaturation() * coefficients.nitrogenSaturation * start.litres();
  }

  /**
   * How a bath stands at first.
   *
   * @param litres volume, L
   * @param celsius temperature of tank and liquid, °C
   * @param roomCelsius temperature of the room, of the load and of the lid, °C
   * @param gasSaturation dissolved gas as a fraction of saturation
   */
  public record Start(double litres, double celsius, double roomCelsius, double gasSaturation) {}

  /** Moves on by one step. */
  public void step(Surroundings u) {
    if (stepsToCoefficients == 0) {
      correlations.fill(y, equations, u, coefficients);
      stepsToCoefficients = STEPS_PER_COEFFICIENTS;
    }
    stepsToCoefficients--;
    integrator.step(y, u, coefficients, STEP_SECONDS);
    y[BathState.MASS] = Math.max(0, y[BathState.MASS]);
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
    y[BathState.MASS] += mass;
    y[BathState.LIQUID] += mass * coefficients.specificHeat * celsius;
    y[BathState.OXYGEN] += coefficients.oxygenSaturation * litres;
    y[BathState.NITROGEN] += coefficients.nitrogenSaturation * litres;
    correlations.fillProperties(liquidCelsius(), coefficients);
    stepsToCoefficients = 0;
  }
}
