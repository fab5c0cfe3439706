package dev.tankwright.plant.bath;

/**
 * The classical Runge–Kutta scheme of fourth order (Kutta 1901) with a fixed step. No allocation
 * per step.
 */
final class RungeKutta4 {
  private final BathEquations equations;
  private final double[] k1 = new double[BathState.SIZE];
  private final double[] k2 = new double[BathState.SIZE];
  private final double[] k3 = new double[BathState.SIZE];
  private final double[] k4 = new double[BathState.SIZE];
  private final double[] between = new double[BathState.SIZE];

  RungeKutta4(BathEquations equations) {
    this.equations = equations;
  }

  /** Moves the state on by one step of the given length, s. */
  void step(double[] y, Surroundings u, Coefficients k, double seconds) {
    equations.rates(y, u, k, k1);
    shift(y, k1, seconds / 2);
    equations.rates(between, u, k, k2);
    shift(y, k2, seconds / 2);
    equations.rates(between, u, k, k3);
    shift(y, k3, seconds);
    equations.rates(between, u, k, k4);
    for (int i = 0; i < y.length; i++) {
      y[i] += seconds / 6 * (k1[i] + 2 * (k2[i] + k3[i]) + k4[i]);
    }
  }

  private void shift(double[] y, double[] rate, double seconds) {
    for (int i = 0; i < y.length; i++) {
      between[i] = y[i] + seconds * rate[i];
    }
  }
}
