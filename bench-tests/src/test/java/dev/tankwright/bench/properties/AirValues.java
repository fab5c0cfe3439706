package dev.tankwright.bench.properties;

import static dev.tankwright.bench.properties.PublishedValue.printed;
import static dev.tankwright.bench.properties.PublishedValue.within;

import dev.tankwright.plant.properties.AirConductivity;
import dev.tankwright.plant.properties.AirFilm;
import dev.tankwright.plant.properties.AirViscosity;
import dev.tankwright.plant.properties.Celsius;
import dev.tankwright.plant.properties.HumidAir;
import java.util.ArrayList;
import java.util.List;

/** Published values of dry and humid air. */
final class AirValues {
  private static final double ATMOSPHERE = 101_325;

  private AirValues() {}

  static List<PublishedValue> all() {
    List<PublishedValue> all = new ArrayList<>();
    transport(all);
    standardAtmosphere(all);
    humidAir(all);
    return all;
  }

  private static void transport(List<PublishedValue> all) {
    String source = "Lemmon and Jacobsen 2004 table V, zero density, from memory";
    all.add(printed("viscosity of air, µPa s", "100 K", viscosity(100), "7.09559", source));
    all.add(printed("viscosity of air, µPa s", "300 K", viscosity(300), "18.5230", source));
    all.add(
        printed("conductivity of air, mW/(m K)", "100 K", conductivity(100), "9.35902", source));
    all.add(
        printed("conductivity of air, mW/(m K)", "300 K", conductivity(300), "26.3529", source));
    all.add(
        within(
            "Prandtl number of air",
            "300 K",
            AirFilm.prandtl(300),
            "0.707",
            0.01,
            "tables of heat transfer, from memory"));
    // These tables print a density of 1.1614 kg/m³, which is that at 100 kPa.
    all.add(
        within(
            "kinematic viscosity of air, m²/s",
            "300 K, 100 kPa",
            AirFilm.kinematicViscosity(300, 100e3),
            "15.89e-6",
            0.01,
            "tables of heat transfer, from memory"));
    all.add(
        within(
            "thermal diffusivity of air, m²/s",
            "300 K, 100 kPa",
            AirFilm.thermalDiffusivity(300, 100e3),
            "22.5e-6",
            0.01,
            "tables of heat transfer, from memory"));
  }

  private static void standardAtmosphere(List<PublishedValue> all) {
    // Another formulation, Sutherland's: within 1 %.
    String source = "U.S. Standard Atmosphere 1976 at sea level, from memory";
    all.add(
        within("viscosity of air, µPa s", "288.15 K", viscosity(288.15), "17.894", 0.01, source));
    all.add(
        within(
            "conductivity of air, mW/(m K)",
            "288.15 K",
            conductivity(288.15),
            "25.326",
            0.01,
            source));
    all.add(
        printed(
            "density of dry air, kg/m³",
            "15 °C, 101.325 kPa",
            HumidAir.kilogramsPerCubicMetre(288.15, 0, ATMOSPHERE),
            "1.2250",
            source));
  }

  private static void humidAir(List<PublishedValue> all) {
    double kelvin = Celsius.toKelvin(20);
    String ashrae = "ASHRAE Fundamentals, moist air at saturation, from memory";
    // The table includes the enhancement of the vapour pressure by air, 0.4 %.
    all.add(
        within(
            "humidity ratio, kg/kg",
            "20 °C, saturated, 101.325 kPa",
            HumidAir.humidityRatio(kelvin, 1, ATMOSPHERE),
            "0.014758",
            0.005,
            ashrae));
    all.add(
        within(
            "density of humid air, kg/m³",
            "20 °C, 50 %, 101.325 kPa",
            HumidAir.kilogramsPerCubicMetre(kelvin, 0.5, ATMOSPHERE),
            "1.1992",
            0.001,
            "CIPM-2007, from memory"));
  }

  private static double viscosity(double kelvin) {
    return 1e6 * AirViscosity.pascalSeconds(kelvin);
  }

  private static double conductivity(double kelvin) {
    return 1e3 * AirConductivity.wattsPerMetreKelvin(kelvin);
  }
}
