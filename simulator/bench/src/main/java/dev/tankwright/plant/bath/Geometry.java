package dev.tankwright.plant.bath;

/**
 * The bath's size and materials.
 *
 * @param tank sizes of the tank
 * @param capacities heat capacities of what is not solution
 * @param heaterToWall conductance of the bond between element and wall, W/K
 * @param housing conductance of the housing's insulation per side area, W/(m² K)
 * @param drainSquareMetres section of the drain, m²
 * @param loadSquareMetresPerKilogram wetted surface of a load of instruments per mass, m²/kg
 */
public record Geometry(
    Tank tank,
    HeatCapacities capacities,
    double heaterToWall,
    double housing,
    double drainSquareMetres,
    double loadSquareMetresPerKilogram) {

  /**
   * Sizes of the tank.
   *
   * @param surfaceSquareMetres horizontal section, m²
   * @param sideSquareMetres outer side walls, m²
   * @param sideMetres height of the side walls, m
   * @param heatedSquareMetres heated part of the wall, at the bottom, m²
   * @param coveredLitres volume at which the heated wall is fully wet, L
   */
  public record Tank(
      double surfaceSquareMetres,
      double sideSquareMetres,
      double sideMetres,
      double heatedSquareMetres,
      double coveredLitres) {}

  /**
   * Heat capacities of what is not solution, J/K.
   *
   * @param heater of the heating element
   * @param wall of the heated wall
   * @param tank of the rest of the tank
   * @param lid of the lid and the air under it
   */
  public record HeatCapacities(double heater, double wall, double tank, double lid) {}
}
