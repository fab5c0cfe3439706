package dev.tankwright.plant.bath;

/** Keeps what was poured in and what the bath held at first, for {@link Balance}. */
final class Ledger {
  private final double firstEnergy;
  private final double firstMass;
  private double pouredEnergy;
  private double pouredMass;

  Ledger(double[] y) {
    firstEnergy = energy(y);
    firstMass = y[BathState.MASS];
  }

  void pour(double energy, double mass) {
    pouredEnergy += energy;
    pouredMass += mass;
  }

  Balance balance(double[] y) {
    double energyOut = y[BathState.LOST] + y[BathState.VAPOUR_ENERGY] + y[BathState.DRAIN_ENERGY];
    double massOut = y[BathState.VAPOUR_MASS] + y[BathState.DRAIN_MASS];
    return new Balance(
        new Balance.Flow(y[BathState.SUPPLIED] + pouredEnergy, energyOut, energy(y) - firstEnergy),
        new Balance.Flow(pouredMass, massOut, y[BathState.MASS] - firstMass));
  }

  private static double energy(double[] y) {
    return y[BathState.HEATER]
        + y[BathState.WALL]
        + y[BathState.LIQUID]
        + y[BathState.LOAD]
        + y[BathState.LID];
  }
}
