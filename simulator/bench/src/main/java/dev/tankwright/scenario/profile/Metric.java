package dev.tankwright.scenario.profile;

import dev.tankwright.plant.BathProfile;

/** Conversions between the units of files and those of the plant. */
final class Metric {
  static final double MILLI = 1000;
  static final double CENTIMETRES_PER_HOUR = 100.0 * 3600;

  private Metric() {}

  static double bore(BathProfile profile) {
    return Math.sqrt(profile.geometry().drainSquareMetres() * 4 / Math.PI) * MILLI;
  }

  static double section(double boreMillimetres) {
    double metres = boreMillimetres / MILLI;
    return Math.PI / 4 * metres * metres;
  }
}
