package dev.tankwright.plant;

import dev.tankwright.controller.board.Outputs;

/** The generator and its transducers. */
final class UltrasoundCircuit {
  private static final int START_STEPS = 3;
  private static final int TRIP_STEPS = 10;

  private final BathProfile.Powers powers;
  private final Switchgear generator = new Switchgear(START_STEPS);
  private int overSteps;
  private boolean faulty;
  private double driveShare;

  UltrasoundCircuit(BathProfile.Powers powers) {
    this.powers = powers;
  }

  void step(Outputs outputs, BrokenParts broken, Supply supply) {
    boolean running = generator.follow(outputs.ultrasoundEnable) && supply.isPresent();
    double drive = running ? outputs.drivePermille / 1000.0 : 0;
    if (broken.none()) {
      overSteps = 0;
      faulty = false;
      driveShare = drive;
    } else {
      faulty = broken.has(PartFault.GENERATOR_DEAD) || isTripped(running, broken);
      driveShare = faulty ? 0 : drive * sounding(broken);
    }
  }

  /** The protection trips some scans after every start and holds until the enable is taken away. */
  private boolean isTripped(boolean running, BrokenParts broken) {
    boolean over = running && broken.has(PartFault.GENERATOR_OVER_CURRENT);
    overSteps = over ? Math.min(overSteps + 1, TRIP_STEPS) : 0;
    return overSteps == TRIP_STEPS;
  }

  private static double sounding(BrokenParts broken) {
    return broken.left(PartFault.GENERATOR_OFF_RESONANCE)
        * (1 - broken.size(PartFault.TRANSDUCERS_DEAD));
  }

  /** Electrical power as a share of the rated power, 0–1. */
  double driveShare() {
    return driveShare;
  }

  /** Power that reaches the liquid, W. */
  double liquidWatts() {
    return driveShare * powers.ultrasoundWatts() * powers.intoLiquid();
  }

  /** Power that stays in the transducers and warms the wall, W. */
  double wallWatts() {
    return driveShare * powers.ultrasoundWatts() * powers.intoWall();
  }

  boolean isRunning() {
    return driveShare > 0;
  }

  boolean isFaulty() {
    return faulty;
  }
}
