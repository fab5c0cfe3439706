package dev.tankwright.bench.physics;

import dev.tankwright.plant.effects.Activity;
import dev.tankwright.plant.effects.EffectRates;
import dev.tankwright.plant.properties.AirSaturation;
import dev.tankwright.plant.properties.Celsius;
import dev.tankwright.plant.properties.OxygenSolubility;
import dev.tankwright.plant.properties.SaturationPressure;
import dev.tankwright.plant.properties.WaterDensity;
import dev.tankwright.plant.properties.WaterSpecificHeat;
import dev.tankwright.plant.properties.WaterViscosity;
import java.util.List;
import java.util.function.DoubleUnaryOperator;

/** Curves of properties against the points of published tables. */
final class PropertyPictures {
  private static final List<Double> TABLE_CELSIUS = List.of(0.0, 10.0, 20.0, 40.0, 50.0);
  private static final String CELSIUS = "temperature, °C";

  private PropertyPictures() {}

  static String density() {
    return against(
        "Density of water, IAPWS SR6-08(2011)",
        "kg/m³",
        t -> WaterDensity.kilogramsPerCubicMetre(Celsius.toKelvin(t)),
        List.of(999.842, 999.702, 998.207, 992.216, 988.035));
  }

  static String specificHeat() {
    return against(
        "Specific heat of water, IAPWS SR6-08(2011)",
        "J/(kg K)",
        t -> WaterSpecificHeat.joulesPerKilogramKelvin(Celsius.toKelvin(t)),
        List.of(4219.3, 4195.1, 4184.2, 4179.4, 4181.2));
  }

  static String viscosity() {
    return against(
        "Viscosity of water, IAPWS SR6-08(2011)",
        "µPa s",
        t -> WaterViscosity.pascalSeconds(Celsius.toKelvin(t)) * 1e6,
        List.of(1791.8, 1305.9, 1001.6, 652.7, 546.5));
  }

  static String vapourPressure() {
    return against(
        "Saturation pressure of water, IAPWS R7-97",
        "kPa",
        t -> SaturationPressure.pascal(Celsius.toKelvin(t)) / 1000,
        List.of(0.61121, 1.22818, 2.33921, 7.38443, 12.35127));
  }

  static String oxygen() {
    Curve benson = Curve.of(0, 40, 1, OxygenSolubility::milligramsPerLitre);
    Curve henry =
        Curve.of(
            5, 60, 1, t -> AirSaturation.oxygenMilligramsPerLitre(Celsius.toKelvin(t), 101_325));
    return new Chart("Oxygen in equilibrium with air", CELSIUS, "mg/L")
        .line("Benson and Krause", benson.x(), benson.y())
        .line("IAPWS G7-04", henry.x(), henry.y())
        .points("table", List.of(0.0, 10.0, 20.0, 40.0), List.of(14.621, 11.288, 9.092, 6.413))
        .svg();
  }

  static String activity() {
    Curve middle = activity(EffectRates.typical());
    Curve low = activity(EffectRates.lowest());
    Curve high = activity(EffectRates.highest());
    return new Chart("Activity over temperature, an estimate (33 W/L, gas 0.6)", CELSIUS, "index")
        .line("middle of the ranges", middle.x(), middle.y())
        .line("lower ends", low.x(), low.y())
        .line("upper ends", high.x(), high.y())
        .svg();
  }

  private static Curve activity(EffectRates rates) {
    return Curve.of(5, 90, 1, t -> new Activity(rates).index(33, 0.6, t, 1, 0));
  }

  private static String against(
      String title, String unit, DoubleUnaryOperator property, List<Double> table) {
    Curve curve = Curve.of(0, 60, 1, property);
    return new Chart(title, CELSIUS, unit)
        .line("computed", curve.x(), curve.y())
        .points("table", TABLE_CELSIUS, table)
        .svg();
  }
}
