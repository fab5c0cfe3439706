package dev.tankwright.plant;

import dev.tankwright.plant.properties.Celsius;
import dev.tankwright.plant.properties.SaturationPressure;

/**
 * Energy balance of heating element, heated wall and liquid, by explicit steps.
 *
 * <p>Water is taken with the density and the specific heat of IAPWS SR6-08(2011) at 40 °C, 992.216
 * kg/m³ and 4179.4 J/(kg K); evaporation from an open surface in still air by the Carrier form
 * (ASHRAE Handbook, HVAC Applications): w = A (p_w − p_a) 0.089 / Y, with Y the latent heat, kJ/kg,
 * and pressures in kPa, air at half saturation. The conductances are estimates.
 */
final class Warmth {
  private static final double KILOGRAM_PER_LITRE = 0.992216;
  private static final double JOULES_PER_KILOGRAM_KELVIN = 4179.4;
  private static final double LATENT_KILOJOULES = 2406.1;
  private static final double STILL_AIR = 0.089;
  private static final double CLOSED_LID_SHARE = 0.03;
  private static final double OPEN_SURFACE = 10;
  private static final double SMALLEST_LIQUID = 40;

  private final BathProfile profile;
  private final double ambient;
  private final double airPascal;
  private double heaterCelsius;
  private double wallCelsius;
  private double liquidCelsius;
  private double evaporationKilogramsPerSecond;

  Warmth(BathProfile profile, BathStart start) {
    this.profile = profile;
    ambient = start.ambientCelsius();
    airPascal = 0.5 * SaturationPressure.pascal(Celsius.toKelvin(ambient));
    heaterCelsius = start.celsius();
    wallCelsius = start.celsius();
    liquidCelsius = start.celsius();
  }

  /**
   * Works out how fast the surface evaporates, kg/s. It changes slowly and is costly, so it is not
   * worked out in every step.
   *
   * @param lidOpen with the lid closed almost nothing leaves: 3 %, an estimate
   */
  void updateEvaporation(boolean lidOpen, boolean wet) {
    double excess = SaturationPressure.pascal(Celsius.toKelvin(bounded(liquidCelsius))) - airPascal;
    double open =
        profile.surfaceSquareMetres() * Math.max(0, excess) / 1000 * STILL_AIR / LATENT_KILOJOULES;
    evaporationKilogramsPerSecond = wet ? open * (lidOpen ? 1 : CLOSED_LID_SHARE) : 0;
  }

  private static double bounded(double celsius) {
    return Math.max(0, Math.min(100, celsius));
  }

  void step(double heaterWatts, double soundWatts, Liquid liquid, boolean lidOpen, double seconds) {
    double wet = liquid.wetShare();
    double toWall = profile.heaterToWall() * (heaterCelsius - wallCelsius);
    double toLiquid = profile.wallToLiquid() * wet * (wallCelsius - liquidCelsius);
    double wallLoss = profile.wallToAir() * (wallCelsius - ambient);
    double surface = lidOpen ? OPEN_SURFACE * profile.surfaceSquareMetres() : profile.lidToAir();
    double liquidLoss =
        (profile.tankToAir() + surface) * (liquidCelsius - ambient)
            + evaporationKilogramsPerSecond * LATENT_KILOJOULES * 1000;
    heaterCelsius += (heaterWatts - toWall) / profile.heaterJoulesPerKelvin() * seconds;
    wallCelsius += (toWall - toLiquid - wallLoss) / profile.wallJoulesPerKelvin() * seconds;
    double capacity = profile.tankJoulesPerKelvin() + heatCapacity(liquid.litres());
    liquidCelsius += (toLiquid + soundWatts - liquidLoss) / capacity * seconds;
  }

  /** Mixes what was poured in with what stands in the tank. */
  void mix(double litres, double celsius, double litresBefore) {
    double before = profile.tankJoulesPerKelvin() + heatCapacity(litresBefore);
    double added = heatCapacity(litres);
    liquidCelsius = (before * liquidCelsius + added * celsius) / (before + added);
  }

  private static double heatCapacity(double litres) {
    return Math.max(SMALLEST_LIQUID, litres * KILOGRAM_PER_LITRE * JOULES_PER_KILOGRAM_KELVIN);
  }

  double liquidCelsius() {
    return liquidCelsius;
  }

  double wallCelsius() {
    return wallCelsius;
  }

  double evaporationKilogramsPerSecond() {
    return evaporationKilogramsPerSecond;
  }
}
