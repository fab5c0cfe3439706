package dev.tankwright.plant.properties;

/** Standard acceleration of free fall, exact by convention (3rd CGPM 1901; ISO 80000-3). */
final class Gravity {
  static final double METRES_PER_SECOND_SQUARED = 9.80665;

  private Gravity() {}
}
