package dev.tankwright.plant.bath;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.tankwright.plant.BathProfile;
import dev.tankwright.scenario.profile.BuiltInBaths;
import org.junit.jupiter.api.Test;

/** Half the step changes a day's result by far less than what is asked of the bath. */
class StepLengthTest {
  private static final int DAY_MINUTES = 8 * 60;
  private static final double KELVIN = 1e-6;
  private static final double GAS_MILLIGRAMS = 1e-6;

  private final BathProfile six = BuiltInBaths.usual();
  private final BathEquations equations = new BathEquations(six.geometry(), six.gas(), 500);

  @Test
  void shouldNotNeedASmallerStep() {
    double[] whole = day(Bath.STEP_SECONDS);
    double[] half = day(Bath.STEP_SECONDS / 2);
    double wall =
        (whole[BathState.WALL] - half[BathState.WALL]) / six.geometry().capacities().wall();
    double liquid = (whole[BathState.LIQUID] - half[BathState.LIQUID]) / 19_000;
    System.out.printf("half the step: wall %.1e K, liquid %.1e K%n", wall, liquid);
    assertEquals(0, wall, KELVIN);
    assertEquals(0, liquid, KELVIN);
    assertEquals(whole[BathState.OXYGEN], half[BathState.OXYGEN], GAS_MILLIGRAMS);
    assertEquals(whole[BathState.NITROGEN], half[BathState.NITROGEN], GAS_MILLIGRAMS);
    assertEquals(whole[BathState.MASS], half[BathState.MASS], 1e-9);
  }

  /**
   * A day by the clock: heat 20 minutes of every hour, sound 15, lid off 10, coefficients at 4 s.
   */
  private double[] day(double step) {
    Bath.Start start = new Bath.Start(4.5, 18, 21, 1);
    double[] y = new Bath(six.geometry(), six.gas(), 0, start, BathObserver.NONE).state();
    Correlations correlations = new Correlations(six.geometry(), 0);
    RungeKutta4 integrator = new RungeKutta4(equations);
    Coefficients k = new Coefficients();
    correlations.fillProperties(18, k);
    Surroundings u = new Surroundings();
    for (int minute = 0; minute < DAY_MINUTES; minute++) {
      drive(u, minute);
      for (int part = 0; part < 15; part++) {
        correlations.fill(y, equations, u, k);
        for (int i = 0; i < Math.rint(4 / step); i++) {
          integrator.step(y, u, k, step);
        }
      }
    }
    return y;
  }

  private static void drive(Surroundings u, int minute) {
    int past = minute % 60;
    u.heaterWatts = past < 20 ? 300 : 0;
    u.driveShare = past >= 20 && past < 35 ? 1 : 0;
    u.soundWatts = 75 * u.driveShare;
    u.transducerWatts = 45 * u.driveShare;
    u.lidOff = past >= 50;
    u.drainOpening = minute == DAY_MINUTES - 100 ? 0.2 : 0;
  }
}
