package dev.tankwright.plant.bath;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.tankwright.plant.BathProfile;
import dev.tankwright.plant.properties.Torricelli;
import dev.tankwright.scenario.profile.BuiltInBaths;
import org.junit.jupiter.api.Test;

/** Equations and integrator where a closed form exists: coefficients held constant. */
class ClosedFormTest {
  private static final double STEP = 0.1;

  private final BathProfile six = BuiltInBaths.usual();
  private final BathEquations equations = new BathEquations(six.geometry(), six.gas(), 500);
  private final RungeKutta4 integrator = new RungeKutta4(equations);
  private final Coefficients k = constant();
  private final Surroundings u = new Surroundings();

  private static Coefficients constant() {
    Coefficients k = new Coefficients();
    k.specificHeat = 4180;
    k.density = 1000;
    return k;
  }

  // Newton's law of cooling: one body, one conductance, T = Tr + (T0 − Tr) exp(−G t / C).
  @Test
  void shouldCoolByNewtonsLawInItsLimit() {
    double conductance = 3;
    k.sidesToRoom = conductance;
    double[] y = new double[BathState.SIZE];
    y[BathState.MASS] = 4;
    double capacity = 4 * 4180 + six.geometry().capacities().tank();
    y[BathState.LIQUID] = capacity * 60;
    y[BathState.LID] = six.geometry().capacities().lid() * u.roomCelsius;
    for (int second = 1; second <= 3600; second++) {
      seconds(y, 1);
      double expected =
          u.roomCelsius + (60 - u.roomCelsius) * Math.exp(-conductance * second / capacity);
      assertEquals(expected, equations.liquidCelsius(y, k), 1e-9);
    }
  }

  // Torricelli: level falls from 100 to 1 mm; sharp edge, no correction for viscosity.
  @Test
  void shouldDrainByTorricellisClosedForm() {
    k.discharge = Torricelli.SHARP_EDGE;
    u.drainOpening = 1;
    Geometry g = six.geometry();
    double[] y = new double[BathState.SIZE];
    y[BathState.MASS] = 1000 * g.tank().surfaceSquareMetres() * 0.1;
    double seconds =
        Torricelli.drainSeconds(
            Torricelli.SHARP_EDGE,
            g.drainSquareMetres(),
            g.tank().surfaceSquareMetres(),
            0.1,
            0.001);
    int whole = (int) seconds;
    seconds(y, whole);
    integrator.step(y, u, k, seconds - whole);
    assertEquals(0.001, y[BathState.MASS] / 1000 / g.tank().surfaceSquareMetres(), 1e-9);
  }

  @Test
  void shouldConvergeWithFourthOrder() {
    double fine = heated(1.0 / 64);
    double coarse = Math.abs(heated(0.5) - fine);
    double half = Math.abs(heated(0.25) - fine);
    double quarter = Math.abs(heated(0.125) - fine);
    double first = Math.log(coarse / half) / Math.log(2);
    double second = Math.log(half / quarter) / Math.log(2);
    System.out.printf("order of convergence: %.2f, %.2f%n", first, second);
    assertEquals(4, first, 0.4);
    assertEquals(4, second, 0.2);
  }

  /** Energy of the wall 8 s after the heater has come on. */
  private double heated(double step) {
    k.wallToLiquid = 40;
    u.heaterWatts = 300;
    double[] y = new double[BathState.SIZE];
    y[BathState.MASS] = 4;
    for (int i = 0; i < Math.rint(8 / step); i++) {
      integrator.step(y, u, k, step);
    }
    assertTrue(y[BathState.WALL] > 0);
    return y[BathState.WALL];
  }

  private void seconds(double[] y, int seconds) {
    for (int i = 0; i < Math.rint(seconds / STEP); i++) {
      integrator.step(y, u, k, STEP);
    }
  }
}
