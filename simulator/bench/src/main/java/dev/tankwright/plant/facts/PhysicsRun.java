package dev.tankwright.plant.facts;

import dev.tankwright.plant.BathProfile;
import dev.tankwright.plant.bath.Bath;
import dev.tankwright.plant.bath.BathObserver;
import dev.tankwright.plant.bath.BathState;
import dev.tankwright.plant.bath.Surroundings;

/** A simulation of a bath without controller and load. Not thread-safe. */
final class PhysicsRun {
  /** Room in which every fact is found, °C. */
  static final double ROOM = 21;

  private static final double SPECIFIC_HEAT = 4180;
  private static final double HOLD_SECONDS = 300;
  private static final double INTEGRAL_SECONDS = 1200;

  private final BathProfile profile;
  private final Bath bath;
  private final Surroundings around = new Surroundings();
  private double heldSum;

  PhysicsRun(BathProfile profile, double litres, double celsius) {
    this.profile = profile;
    bath =
        new Bath(
            profile.geometry(),
            profile.gas(),
            0,
            new Bath.Start(litres, celsius, ROOM, 1),
            BathObserver.NONE);
    around.roomCelsius = ROOM;
  }

  PhysicsRun lidOff(boolean off) {
    around.lidOff = off;
    return this;
  }

  Bath bath() {
    return bath;
  }

  Surroundings around() {
    return around;
  }

  /** Full heat from now on. */
  PhysicsRun fullHeat() {
    around.heaterWatts = profile.powers().heaterWatts();
    return this;
  }

  void run(double seconds) {
    long steps = Math.round(seconds / Bath.STEP_SECONDS);
    for (long i = 0; i < steps; i++) {
      bath.step(around);
    }
  }

  /** Holds the solution at a temperature by steady heat, whatever the heater's rating. */
  void hold(double celsius, double seconds) {
    double capacity = bath.litres() * SPECIFIC_HEAT;
    long steps = Math.round(seconds / Bath.STEP_SECONDS);
    for (long i = 0; i < steps; i++) {
      double error = celsius - bath.liquidCelsius();
      heldSum += error * Bath.STEP_SECONDS / INTEGRAL_SECONDS;
      around.heaterWatts = Math.max(0, capacity / HOLD_SECONDS * (error + heldSum));
      bath.step(around);
    }
  }

  /** Energy that has left for the room or with vapour, J. */
  double lostJoules() {
    double[] state = bath.state();
    return state[BathState.LOST] + state[BathState.VAPOUR_ENERGY];
  }

  /** Mass that has left as vapour, kg. */
  double evaporatedKilograms() {
    return bath.state()[BathState.VAPOUR_MASS];
  }
}
