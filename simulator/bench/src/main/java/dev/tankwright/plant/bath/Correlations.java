package dev.tankwright.plant.bath;

import dev.tankwright.plant.properties.AirSaturation;
import dev.tankwright.plant.properties.Celsius;
import dev.tankwright.plant.properties.LatentHeat;
import dev.tankwright.plant.properties.ShahEvaporation;
import dev.tankwright.plant.properties.Torricelli;
import dev.tankwright.plant.properties.WaterDensity;
import dev.tankwright.plant.properties.WaterSpecificHeat;
import dev.tankwright.plant.properties.WaterViscosity;

/**
 * Fills the coefficients from published correlations at the present temperatures. Where a
 * temperature leaves a correlation's range (a boiling or freezing bath) the end of the range is
 * taken: the controller must have acted long before.
 */
public final class Correlations {
  /** Total pressure of the air, Pa: the standard atmosphere. */
  static final double ATMOSPHERE = 101_325;

  private static final double COLDEST = 7;
  private static final double HOTTEST = 94;
  private static final double COLDEST_ROOM = 6;
  private static final double HOTTEST_ROOM = 35;
  private static final double DRIEST = 0.28;
  private static final double DAMPEST = 0.95;
  private static final double SECONDS_PER_HOUR = 3600;

  // What leaves past a closed lid: an estimate.
  private static final double CLOSED_LID_SHARE = 0.02;

  // How the discharge falls with viscosity, Cd = Cd0 / (1 + c / Re): an estimate.
  private static final double DISCHARGE_REYNOLDS = 100;

  private final Geometry geometry;
  private final Conductances conductances;

  /**
   * Makes the correlations of one bath.
   *
   * @param loadKilograms mass of the load, kg
   */
  public Correlations(Geometry geometry, double loadKilograms) {
    this.geometry = geometry;
    conductances = new Conductances(geometry, loadKilograms);
  }

  /** Fills everything. */
  public void fill(double[] y, BathEquations equations, Surroundings u, Coefficients k) {
    double liquid = bounded(equations.liquidCelsius(y, k), COLDEST, HOTTEST);
    fillProperties(liquid, k);
    double wall = y[BathState.WALL] / geometry.capacities().wall();
    double lid = y[BathState.LID] / geometry.capacities().lid();
    conductances.fill(liquid, wall, lid, u, k);
    k.evaporation = evaporation(liquid, u);
    k.discharge = discharge(liquid, y[BathState.MASS] / k.density);
  }

  /** Fills what depends on the temperature of the liquid alone. */
  public void fillProperties(double celsius, Coefficients k) {
    double liquid = bounded(celsius, COLDEST, HOTTEST);
    double kelvin = Celsius.toKelvin(liquid);
    k.density = WaterDensity.kilogramsPerCubicMetre(kelvin);
    k.specificHeat = meanSpecificHeat(liquid);
    k.latentHeat = LatentHeat.joulesPerKilogram(kelvin);
    k.oxygenSaturation = AirSaturation.oxygenMilligramsPerLitre(kelvin, ATMOSPHERE);
    k.nitrogenSaturation = AirSaturation.nitrogenMilligramsPerLitre(kelvin, ATMOSPHERE);
  }

  // Mean from 0 °C to the temperature by Simpson's rule, so that m c T is the energy above 0 °C.
  private static double meanSpecificHeat(double celsius) {
    double low = WaterSpecificHeat.joulesPerKilogramKelvin(Celsius.toKelvin(0));
    double middle = WaterSpecificHeat.joulesPerKilogramKelvin(Celsius.toKelvin(celsius / 2));
    double high = WaterSpecificHeat.joulesPerKilogramKelvin(Celsius.toKelvin(celsius));
    return (low + 4 * middle + high) / 6;
  }

  private double evaporation(double liquid, Surroundings u) {
    double room = bounded(u.roomCelsius, COLDEST_ROOM, HOTTEST_ROOM);
    double humidity = bounded(u.roomHumidity, DRIEST, DAMPEST);
    double flux =
        ShahEvaporation.kilogramsPerSquareMetreHour(
            Celsius.toKelvin(liquid), Celsius.toKelvin(room), humidity, ATMOSPHERE);
    double open = flux * geometry.tank().surfaceSquareMetres() / SECONDS_PER_HOUR;
    return u.lidOff ? open : open * CLOSED_LID_SHARE;
  }

  private double discharge(double liquid, double cubicMetres) {
    double height = Math.max(1e-4, cubicMetres / geometry.tank().surfaceSquareMetres());
    double kelvin = Celsius.toKelvin(liquid);
    double kinematic =
        WaterViscosity.pascalSeconds(kelvin) / WaterDensity.kilogramsPerCubicMetre(kelvin);
    double bore = Math.sqrt(geometry.drainSquareMetres() * 4 / Math.PI);
    double reynolds = Torricelli.metresPerSecond(height) * bore / kinematic;
    return Torricelli.SHARP_EDGE / (1 + DISCHARGE_REYNOLDS / reynolds);
  }

  static double bounded(double value, double low, double high) {
    return Math.max(low, Math.min(high, value));
  }
}
