package dev.tankwright.plant.bath;

/**
 * The bath's size and materials.
 *
 * @param surfaceSquareMetres horizontal section of the tank, m²
 * @param sideSquareMetres outer side walls, m²
 * @param sideMetres height of the side walls, m
 * @param heatedSquareMetres heated part of the wall, at the bottom, m²
 * @param coveredLitres volume at which the heated wall is fully wet, L
 * @param heaterCapacity heat capacity of the heating element, J/K
 * @param wallCapacity heat capacity of the heated wall, J/K
 * @param tankCapacity heat capacity of the rest of the tank, J/K
 * @param lidCapacity heat capacity of the lid and the air under it, J/K
 * @param heaterToWall conductance of the bond between element and wall, W/K
 * @param housing conductance of the housing's insulation per side area, W/(m² K)
 * @param drainSquareMetres section of the drain, m²
 * @param loadSquareMetresPerKilogram wetted surface of a load of instruments per mass, m²/kg
 */
public record Geometry(
    double surfaceSquareMetres,
    double sideSquareMetres,
    double sideMetres,
    double heatedSquareMetres,
    double coveredLitres,
    double heaterCapacity,
    double wallCapacity,
    double tankCapacity,
    double lidCapacity,
    double heaterToWall,
    double housing,
    double drainSquareMetres,
    double loadSquareMetresPerKilogram) {}
