package dev.tankwright.bench.physics;

import dev.tankwright.plant.bath.BathEquations;
import dev.tankwright.plant.bath.BathState;
import dev.tankwright.plant.bath.Coefficients;
import dev.tankwright.plant.bath.Correlations;
import dev.tankwright.plant.bath.Surroundings;
import java.util.Arrays;
import org.hipparchus.ode.ODEState;
import org.hipparchus.ode.OrdinaryDifferentialEquation;
import org.hipparchus.ode.nonstiff.DormandPrince853Integrator;

/**
 * The same equations solved by an adaptive scheme of eighth order (Dormand and Prince 1981, as in
 * Hairer, Nørsett and Wanner 1993) with the coefficients worked out anew in every evaluation.
 */
final class AdaptiveBath {
  private static final double SHORTEST_STEP = 1e-9;
  private static final double LONGEST_STEP = 30;
  private static final double RELATIVE = 1e-9;

  private final BathEquations equations;
  private final Correlations correlations;
  private final Coefficients coefficients = new Coefficients();

  AdaptiveBath(BathEquations equations, Correlations correlations) {
    this.equations = equations;
    this.correlations = correlations;
    correlations.fillProperties(20, coefficients);
  }

  /** The state after a stretch of time. */
  double[] after(double[] y, Surroundings u, double seconds) {
    DormandPrince853Integrator integrator =
        new DormandPrince853Integrator(SHORTEST_STEP, LONGEST_STEP, absolute(), relative());
    return integrator.integrate(new Problem(u), new ODEState(0, y), seconds).getPrimaryState();
  }

  /** Temperature of the liquid in a state, °C. */
  double liquidCelsius(double[] y) {
    settle(y);
    return equations.liquidCelsius(y, coefficients);
  }

  /** Volume of the liquid in a state, L. */
  double litres(double[] y) {
    settle(y);
    return y[BathState.MASS] / coefficients.density * 1000;
  }

  // The temperature depends on the specific heat and the other way round: a few rounds settle it.
  private void settle(double[] y) {
    for (int round = 0; round < 3; round++) {
      correlations.fillProperties(equations.liquidCelsius(y, coefficients), coefficients);
    }
  }

  private static double[] absolute() {
    double[] tolerance = new double[BathState.SIZE];
    for (int i = 0; i < tolerance.length; i++) {
      tolerance[i] = 1e-3;
    }
    tolerance[BathState.MASS] = 1e-8;
    tolerance[BathState.VAPOUR_MASS] = 1e-8;
    tolerance[BathState.DRAIN_MASS] = 1e-8;
    tolerance[BathState.OXYGEN] = 1e-7;
    tolerance[BathState.NITROGEN] = 1e-7;
    return tolerance;
  }

  private static double[] relative() {
    double[] tolerance = new double[BathState.SIZE];
    Arrays.fill(tolerance, RELATIVE);
    return tolerance;
  }

  private final class Problem implements OrdinaryDifferentialEquation {
    private final Surroundings acting;

    Problem(Surroundings acting) {
      this.acting = acting;
    }

    @Override
    public int getDimension() {
      return BathState.SIZE;
    }

    @Override
    public double[] computeDerivatives(double t, double[] y) {
      double[] rate = new double[BathState.SIZE];
      settle(y);
      correlations.fill(y, equations, acting, coefficients);
      equations.rates(y, acting, coefficients, rate);
      return rate;
    }
  }
}
