package dev.tankwright.plant;

/**
 * The parts of one bath. All values are estimates within the ranges of common practice (heater
 * 40–100 W/L, electrical ultrasound power 10–50 W/L of which 30–60 % reaches the liquid, wall
 * 0.8–1.5 mm stainless steel, sensor t50 5–40 s), no source.
 *
 * @param brimLitres volume at which the tank overflows, L
 * @param fillMarkLitres volume at the fill mark's contact, L
 * @param minimumLitres volume at the minimum contact, L
 * @param surfaceSquareMetres horizontal section of the tank, m²
 * @param heaterWatts electrical power of the heater at nominal mains, W
 * @param ultrasoundWatts electrical power of the generator at full drive, W
 * @param ultrasoundIntoLiquid share of that power that reaches the liquid, 0–1
 * @param heaterJoulesPerKelvin heat capacity of the heating element, J/K
 * @param wallJoulesPerKelvin heat capacity of the heated part of the wall, J/K
 * @param tankJoulesPerKelvin heat capacity of the rest of the tank, which follows the liquid, J/K
 * @param heaterToWall conductance, W/K
 * @param wallToLiquid conductance when the wall is wet, W/K
 * @param wallToAir conductance, W/K
 * @param tankToAir conductance of the rest of the tank, W/K
 * @param lidToAir conductance from the surface through the closed lid, W/K
 * @param drainMetres bore of the drain, m
 * @param controlSensorTau time constant of the control sensor in its well, s
 * @param cutOffSensorTau time constant of the cut-off sensor in its well, s
 */
public record BathProfile(
    double brimLitres,
    double fillMarkLitres,
    double minimumLitres,
    double surfaceSquareMetres,
    double heaterWatts,
    double ultrasoundWatts,
    double ultrasoundIntoLiquid,
    double heaterJoulesPerKelvin,
    double wallJoulesPerKelvin,
    double tankJoulesPerKelvin,
    double heaterToWall,
    double wallToLiquid,
    double wallToAir,
    double tankToAir,
    double lidToAir,
    double drainMetres,
    double controlSensorTau,
    double cutOffSensorTau) {

  /** A bench bath of six litres with 300 W of heat and 150 W of ultrasound. */
  public static BathProfile sixLitre() {
    return new BathProfile(
        6.0, 4.0, 3.0, 0.045, 300, 150, 0.5, 50, 150, 700, 25, 40, 0.3, 1.0, 0.3, 0.010, 12, 10);
  }
}
