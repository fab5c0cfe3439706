package dev.tankwright.plant;

import dev.tankwright.plant.bath.Surroundings;

/**
 * Gathers what the actuators do in each scan and gives the bath their mean over its longer step, so
 * that no energy is lost between the two.
 */
final class MeanDrive {
  private double heaterWatts;
  private double soundWatts;
  private double wallWatts;
  private double driveShare;
  private double drainOpening;
  private int scans;

  void add(HeaterCircuit heater, UltrasoundCircuit sound, double opening) {
    heaterWatts += heater.watts();
    soundWatts += sound.liquidWatts();
    wallWatts += sound.wallWatts();
    driveShare += sound.driveShare();
    drainOpening += opening;
    scans++;
  }

  int scans() {
    return scans;
  }

  /** Writes the means and begins anew. */
  void into(Surroundings u) {
    u.heaterWatts = heaterWatts / scans;
    u.soundWatts = soundWatts / scans;
    u.transducerWatts = wallWatts / scans;
    u.driveShare = driveShare / scans;
    u.drainOpening = drainOpening / scans;
    heaterWatts = 0;
    soundWatts = 0;
    wallWatts = 0;
    driveShare = 0;
    drainOpening = 0;
    scans = 0;
  }
}
