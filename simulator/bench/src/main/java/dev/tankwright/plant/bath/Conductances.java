package dev.tankwright.plant.bath;

import dev.tankwright.plant.properties.AirConductivity;
import dev.tankwright.plant.properties.AirFilm;
import dev.tankwright.plant.properties.Celsius;
import dev.tankwright.plant.properties.HorizontalPlateConvection;
import dev.tankwright.plant.properties.Rayleigh;
import dev.tankwright.plant.properties.ThermalRadiation;
import dev.tankwright.plant.properties.VerticalPlateConvection;
import dev.tankwright.plant.properties.WaterConductivity;
import dev.tankwright.plant.properties.WaterDensity;
import dev.tankwright.plant.properties.WaterSpecificHeat;
import dev.tankwright.plant.properties.WaterViscosity;

/**
 * Heat transfer of the bath's surfaces: natural convection by Churchill and Chu 1975 at the sides
 * and by McAdams at horizontal surfaces, radiation linearised between the two temperatures. The
 * factor that condensing vapour brings and the transfer to the load are estimates, marked below.
 */
final class Conductances {
  // Vapour that condenses under a closed lid carries this many times the heat of convection: an
  // estimate, 2–5.
  private static final double CONDENSATION_GAIN = 3;

  // Transfer to the instruments of a load without ultrasound, W/(m² K): an estimate, 200–500.
  private static final double LOAD_TRANSFER = 300;

  private static final double WATER_EMISSIVITY = 0.95;
  private static final double STEEL_EMISSIVITY = 0.3;
  private static final double PAINT_EMISSIVITY = 0.9;
  private static final double LEAST_DIFFERENCE = 0.1;
  private static final double HOTTEST_FILM = 120;

  private final Geometry geometry;
  private final double loadSquareMetres;
  private final double plateMetres;

  Conductances(Geometry geometry, double loadKilograms) {
    this.geometry = geometry;
    loadSquareMetres = loadKilograms * geometry.loadSquareMetresPerKilogram();
    // Characteristic length of a horizontal plate: area by perimeter, taken as of a square.
    plateMetres = Math.sqrt(geometry.tank().surfaceSquareMetres()) / 4;
  }

  void fill(double liquid, double wall, double lid, Surroundings u, Coefficients k) {
    double room = u.roomCelsius;
    double surface = geometry.tank().surfaceSquareMetres();
    k.wallToLiquid = geometry.tank().heatedSquareMetres() * waterPlate(wall, liquid);
    k.wallToRoom =
        geometry.tank().heatedSquareMetres()
            * (airPlate(wall, room) + radiation(STEEL_EMISSIVITY, wall, room));
    k.sidesToRoom = geometry.tank().sideSquareMetres() * housing(liquid, room);
    k.surfaceToLid = u.lidOff ? 0 : surface * gap(liquid, lid);
    k.surfaceToRoom = u.lidOff ? surface * open(liquid, room) : 0;
    k.lidToRoom = surface * (airPlate(lid, room) + radiation(STEEL_EMISSIVITY, lid, room));
    k.liquidToLoad = loadSquareMetres * LOAD_TRANSFER;
  }

  /** Surface of the liquid through the air under the lid to the lid, W/(m² K). */
  private double gap(double liquid, double lid) {
    return CONDENSATION_GAIN * airPlate(liquid, lid) + radiation(WATER_EMISSIVITY, liquid, lid);
  }

  /** Surface of the liquid to the open room, W/(m² K). */
  private double open(double liquid, double room) {
    return airPlate(liquid, room) + radiation(WATER_EMISSIVITY, liquid, room);
  }

  /** Heated plate under water, W/(m² K). */
  private double waterPlate(double wall, double liquid) {
    double film = Correlations.bounded((wall + liquid) / 2, 1, 94);
    double kelvin = Celsius.toKelvin(film);
    double density = WaterDensity.kilogramsPerCubicMetre(kelvin);
    double conductivity = WaterConductivity.wattsPerMetreKelvin(kelvin);
    double heat = density * WaterSpecificHeat.joulesPerKilogramKelvin(kelvin);
    double rayleigh =
        Rayleigh.number(
            Math.max(1e-5, WaterDensity.expansionPerKelvin(kelvin)),
            difference(wall, liquid),
            plateMetres,
            WaterViscosity.pascalSeconds(kelvin) / density,
            conductivity / heat);
    return horizontal(rayleigh) * conductivity / plateMetres;
  }

  /** Warm horizontal surface under air, W/(m² K). */
  private double airPlate(double surface, double air) {
    double kelvin = film(surface, air);
    return horizontal(airRayleigh(kelvin, difference(surface, air), plateMetres))
        * AirConductivity.wattsPerMetreKelvin(kelvin)
        / plateMetres;
  }

  /**
   * Liquid through the insulated housing to the room, W/(m² K). The skin is taken a third of the
   * way up from the room.
   */
  private double housing(double liquid, double room) {
    double skin = room + (liquid - room) / 3;
    double kelvin = film(skin, room);
    double rayleigh = airRayleigh(kelvin, difference(skin, room), geometry.tank().sideMetres());
    double convection =
        VerticalPlateConvection.nusselt(rayleigh, AirFilm.prandtl(kelvin))
            * AirConductivity.wattsPerMetreKelvin(kelvin)
            / geometry.tank().sideMetres();
    double outside = convection + radiation(PAINT_EMISSIVITY, skin, room);
    return 1 / (1 / geometry.housing() + 1 / outside);
  }

  private static double airRayleigh(double kelvin, double difference, double metres) {
    return Rayleigh.number(
        AirFilm.expansionPerKelvin(kelvin),
        difference,
        metres,
        AirFilm.kinematicViscosity(kelvin, Correlations.ATMOSPHERE),
        AirFilm.thermalDiffusivity(kelvin, Correlations.ATMOSPHERE));
  }

  private static double horizontal(double rayleigh) {
    return HorizontalPlateConvection.nusselt(
        Correlations.bounded(
            rayleigh,
            HorizontalPlateConvection.LOWEST_RAYLEIGH,
            HorizontalPlateConvection.HIGHEST_RAYLEIGH));
  }

  /** Radiation between two temperatures as a conductance, W/(m² K). */
  private static double radiation(double emissivity, double warm, double cold) {
    double a = Celsius.toKelvin(Correlations.bounded(warm, 0, 700));
    double b = Celsius.toKelvin(cold);
    // (a⁴ − b⁴) / (a − b), which has no pole where the two are equal.
    return emissivity * ThermalRadiation.STEFAN_BOLTZMANN * (a * a + b * b) * (a + b);
  }

  private static double film(double one, double other) {
    return Celsius.toKelvin(Correlations.bounded((one + other) / 2, 0, HOTTEST_FILM));
  }

  private static double difference(double one, double other) {
    return Math.max(LEAST_DIFFERENCE, Math.abs(one - other));
  }
}
