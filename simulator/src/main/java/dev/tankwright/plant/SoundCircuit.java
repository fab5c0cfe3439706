package dev.tankwright.plant;

import dev.tankwright.controller.board.Outputs;

/** The generator and its transducers. */
final class SoundCircuit {
  private static final int START_STEPS = 3;

  private final BathProfile.Powers powers;
  private final Switchgear generator = new Switchgear(START_STEPS);
  private boolean dead;
  private double driveShare;

  SoundCircuit(BathProfile.Powers powers) {
    this.powers = powers;
  }

  void step(Outputs outputs, Breakages broken, Supply supply) {
    dead = broken.has(PartFault.GENERATOR_DEAD);
    boolean running = generator.follow(outputs.ultrasoundEnable);
    boolean drives = running && supply.isPresent() && !dead;
    driveShare = drives ? outputs.drivePermille / 1000.0 : 0;
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
    return dead;
  }
}
