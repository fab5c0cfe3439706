package dev.tankwright.plant.facts;

import dev.tankwright.plant.BathProfile;

/**
 * What a bath at the fill mark loses when it is held at a temperature.
 *
 * @param watts to the room and with vapour, W
 * @param kilogramsPerHour evaporation, kg/h
 */
public record Losses(double watts, double kilogramsPerHour) {
  private static final double SETTLING_SECONDS = 5400;
  private static final double MEASURED_SECONDS = 600;
  private static final double SECONDS_PER_HOUR = 3600;

  /** Finds them by holding the bath until lid and walls have settled, then measuring. */
  public static Losses of(BathProfile profile, double celsius, boolean lidOff) {
    PhysicsRun trial =
        new PhysicsRun(profile, profile.levels().fillMarkLitres(), celsius).lidOff(lidOff);
    trial.hold(celsius, SETTLING_SECONDS);
    double lost = trial.lostJoules();
    double evaporated = trial.evaporatedKilograms();
    trial.hold(celsius, MEASURED_SECONDS);
    return new Losses(
        (trial.lostJoules() - lost) / MEASURED_SECONDS,
        (trial.evaporatedKilograms() - evaporated) / MEASURED_SECONDS * SECONDS_PER_HOUR);
  }
}
