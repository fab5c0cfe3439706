package dev.tankwright.bench.properties;

import dev.tankwright.plant.properties.AirConductivity;
import dev.tankwright.plant.properties.AirFilm;
import dev.tankwright.plant.properties.AirSaturation;
import dev.tankwright.plant.properties.AirViscosity;
import dev.tankwright.plant.properties.CarrierEvaporation;
import dev.tankwright.plant.properties.Celsius;
import dev.tankwright.plant.properties.HenryConstant;
import dev.tankwright.plant.properties.HorizontalPlateConvection;
import dev.tankwright.plant.properties.HumidAir;
import dev.tankwright.plant.properties.LatentHeat;
import dev.tankwright.plant.properties.OxygenSolubility;
import dev.tankwright.plant.properties.PlatinumResistance;
import dev.tankwright.plant.properties.SaturationCurve;
import dev.tankwright.plant.properties.SaturationPressure;
import dev.tankwright.plant.properties.SaturationTemperature;
import dev.tankwright.plant.properties.ShahEvaporation;
import dev.tankwright.plant.properties.SurfaceTension;
import dev.tankwright.plant.properties.ThermalRadiation;
import dev.tankwright.plant.properties.Torricelli;
import dev.tankwright.plant.properties.VerticalPlateConvection;
import dev.tankwright.plant.properties.WaterConductivity;
import dev.tankwright.plant.properties.WaterDensity;
import dev.tankwright.plant.properties.WaterSoundSpeed;
import dev.tankwright.plant.properties.WaterSpecificHeat;
import dev.tankwright.plant.properties.WaterViscosity;
import java.util.List;
import java.util.function.DoubleUnaryOperator;

/**
 * One argument of one correlation, the others held fixed within their ranges.
 *
 * @param name of the correlation and the argument
 * @param lowest lower end of the argument's published range
 * @param highest upper end
 * @param function of the argument
 */
record Correlation(String name, double lowest, double highest, DoubleUnaryOperator function) {
  private static final double P = 101_325;

  static List<Correlation> all() {
    return List.of(
        new Correlation("Celsius.toKelvin", -273.15, 1e6, Celsius::toKelvin),
        new Correlation("Celsius.fromKelvin", 0, 1e6, Celsius::fromKelvin),
        new Correlation("IEC 60751 ratio", -200, 850, PlatinumResistance::ratio),
        new Correlation("IEC 60751 class A", -100, 450, PlatinumResistance::classAKelvin),
        new Correlation("IEC 60751 class B", -196, 600, PlatinumResistance::classBKelvin),
        new Correlation("density", 253.15, 383.15, WaterDensity::kilogramsPerCubicMetre),
        new Correlation("expansion", 253.15, 383.15, WaterDensity::expansionPerKelvin),
        new Correlation(
            "specific heat", 253.15, 383.15, WaterSpecificHeat::joulesPerKilogramKelvin),
        new Correlation("viscosity", 253.15, 383.15, WaterViscosity::pascalSeconds),
        new Correlation("conductivity", 273.15, 383.15, WaterConductivity::wattsPerMetreKelvin),
        new Correlation("speed of sound", 0, 95, WaterSoundSpeed::metresPerSecond),
        new Correlation("surface tension", 248.15, 647.096, SurfaceTension::newtonsPerMetre),
        new Correlation("IF97 equation 30", 273.15, 647.096, SaturationPressure::pascal),
        new Correlation("IF97 equation 31", 611.213, 22.064e6, SaturationTemperature::kelvin),
        new Correlation("SR1-86 pressure", 273.15, 647.096, SaturationCurve::pascal),
        new Correlation("SR1-86 slope", 273.15, 647.096, SaturationCurve::pascalPerKelvin),
        new Correlation(
            "SR1-86 liquid", 273.15, 647.096, SaturationCurve::liquidKilogramsPerCubicMetre),
        new Correlation(
            "SR1-86 vapour", 273.15, 647.096, SaturationCurve::vapourKilogramsPerCubicMetre),
        new Correlation(
            "SR1-86 liquid enthalpy", 273.15, 647.096, SaturationCurve::liquidJoulesPerKilogram),
        new Correlation(
            "SR1-86 vapour enthalpy", 273.15, 647.096, SaturationCurve::vapourJoulesPerKilogram),
        new Correlation("latent heat", 273.15, 647.096, LatentHeat::joulesPerKilogram),
        new Correlation("Benson and Krause", 0, 40, OxygenSolubility::milligramsPerLitre),
        new Correlation("G7-04 oxygen", 274.15, 616.52, HenryConstant::oxygenPascal),
        new Correlation("G7-04 nitrogen", 278.12, 636.46, HenryConstant::nitrogenPascal),
        new Correlation(
            "air saturation, pressure",
            50e3,
            300e3,
            p -> AirSaturation.oxygenMilligramsPerLitre(300, p)),
        new Correlation(
            "air saturation of nitrogen at 300 kPa",
            278.12,
            383.15,
            t -> AirSaturation.nitrogenMilligramsPerLitre(t, 300e3)),
        new Correlation(
            "humid air, temperature", 273.15, 373.15, t -> HumidAir.vapourPascal(t, 0.5)),
        new Correlation("humid air, humidity", 0, 1, x -> HumidAir.humidityRatio(300, x, P)),
        new Correlation(
            "humid air, pressure", 50e3, 300e3, p -> HumidAir.kilogramsPerCubicMetre(300, 1, p)),
        new Correlation("viscosity of air", 100, 1000, AirViscosity::pascalSeconds),
        new Correlation("conductivity of air", 100, 1000, AirConductivity::wattsPerMetreKelvin),
        new Correlation("Prandtl number of air", 250, 400, AirFilm::prandtl),
        new Correlation("expansion of air", 250, 400, AirFilm::expansionPerKelvin),
        new Correlation(
            "kinematic viscosity of air", 250, 400, t -> AirFilm.kinematicViscosity(t, P)),
        new Correlation(
            "diffusivity of air, pressure", 50e3, 300e3, p -> AirFilm.thermalDiffusivity(300, p)),
        new Correlation("vertical plate", 0, 1e12, ra -> VerticalPlateConvection.nusselt(ra, 0.71)),
        new Correlation("horizontal plate", 1e4, 1e11, HorizontalPlateConvection::nusselt),
        new Correlation("Shah, water", 280.15, 367.15, t -> shah(t, 293.15, 0.5, P)),
        new Correlation("Shah, air", 279.15, 308.15, t -> shah(323.15, t, 0.5, P)),
        new Correlation("Shah, humidity", 0.28, 0.95, x -> shah(323.15, 293.15, x, P)),
        new Correlation("Shah, pressure", 85e3, 110e3, p -> shah(323.15, 293.15, 0.5, p)),
        new Correlation("Carrier, water", 280.15, 367.15, t -> carrier(t, 293.15, 0.5)),
        new Correlation("Carrier, air", 279.15, 308.15, t -> carrier(323.15, t, 0.5)),
        new Correlation("Carrier, humidity", 0.28, 0.95, x -> carrier(323.15, 293.15, x)),
        new Correlation(
            "radiation, emissivity", 0, 1, e -> ThermalRadiation.wattsPerSquareMetre(e, 300, 290)),
        new Correlation(
            "radiation, surface", 0, 1000, t -> ThermalRadiation.wattsPerSquareMetre(1, t, 290)),
        new Correlation(
            "radiation, surroundings",
            0,
            1000,
            t -> ThermalRadiation.wattsPerSquareMetre(1, 300, t)),
        new Correlation(
            "Torricelli, level at the end",
            0,
            0.1,
            h -> Torricelli.drainSeconds(0.61, 1e-4, 0.05, 0.1, h)));
  }

  private static double shah(double water, double air, double humidity, double pascal) {
    return ShahEvaporation.kilogramsPerSquareMetreHour(water, air, humidity, pascal);
  }

  private static double carrier(double water, double air, double humidity) {
    return CarrierEvaporation.kilogramsPerSquareMetreHour(water, air, humidity);
  }

  double at(double argument) {
    return function.applyAsDouble(argument);
  }

  @Override
  public String toString() {
    return name;
  }
}
