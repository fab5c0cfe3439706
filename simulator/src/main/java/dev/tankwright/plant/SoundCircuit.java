package dev.tankwright.plant;

import dev.tankwright.controller.board.Outputs;

/** The generator and its transducers. */
final class SoundCircuit {
  private static final int START_STEPS = 3;

  private final BathProfile profile;
  private final Switchgear generator = new Switchgear(START_STEPS);
  private boolean dead;
  private double driveShare;

  SoundCircuit(BathProfile profile) {
    this.profile = profile;
  }

  void step(Outputs outputs, Breakages broken) {
    dead = broken.has(PartFault.GENERATOR_DEAD);
    boolean running = generator.follow(outputs.ultrasoundEnable);
    boolean supplied = !dead && !broken.has(PartFault.MAINS_CUT);
    driveShare = running && supplied ? outputs.drivePermille / 1000.0 : 0;
  }

  /** Electrical power as a share of the rated power, 0–1. */
  double driveShare() {
    return driveShare;
  }

  /** Power that reaches the liquid, W. */
  double liquidWatts() {
    return driveShare * profile.ultrasoundWatts() * profile.ultrasoundIntoLiquid();
  }

  boolean isRunning() {
    return driveShare > 0;
  }

  boolean isFaulty() {
    return dead;
  }
}
