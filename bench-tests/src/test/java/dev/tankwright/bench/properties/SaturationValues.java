package dev.tankwright.bench.properties;

import static dev.tankwright.bench.properties.PublishedValue.printed;

import dev.tankwright.plant.properties.Celsius;
import dev.tankwright.plant.properties.LatentHeat;
import dev.tankwright.plant.properties.SaturationCurve;
import dev.tankwright.plant.properties.SaturationPressure;
import dev.tankwright.plant.properties.SaturationTemperature;
import java.util.ArrayList;
import java.util.List;

/** Published values of water and its vapour in equilibrium. */
final class SaturationValues {
  private static final int[] CELSIUS = {0, 10, 20, 40, 50};
  private static final String TABLE_1 = "IAPWS SR1-86(1992) table 1";

  private SaturationValues() {}

  static List<PublishedValue> all() {
    List<PublishedValue> all = new ArrayList<>();
    atCelsius(all);
    if97(all);
    triplePoint(all);
    boilingPoint(all);
    return all;
  }

  private static void atCelsius(List<PublishedValue> all) {
    String[] pressures = {"611.21", "1228.18", "2339.21", "7384.43", "12351.27"};
    String[] heats = {"2500.6", "2477.3", "2453.8", "2406.1", "2382.0"};
    for (int i = 0; i < CELSIUS.length; i++) {
      double kelvin = Celsius.toKelvin(CELSIUS[i]);
      String point = CELSIUS[i] + " °C";
      all.add(
          printed(
              "saturation pressure, Pa",
              point,
              SaturationPressure.pascal(kelvin),
              pressures[i],
              "IAPWS R7-97 (IF97) equation 30, computed from the published equation"));
      all.add(
          printed(
              "latent heat, kJ/kg",
              point,
              1e-3 * LatentHeat.joulesPerKilogram(kelvin),
              heats[i],
              "IAPWS SR1-86(1992) by Clapeyron, computed from the published equation"));
    }
  }

  private static void if97(List<PublishedValue> all) {
    String pressure = "saturation pressure, MPa";
    String table35 = "IAPWS R7-97 (IF97) table 35";
    all.add(
        printed(
            pressure, "300 K", 1e-6 * SaturationPressure.pascal(300), "0.353658941e-2", table35));
    all.add(
        printed(pressure, "500 K", 1e-6 * SaturationPressure.pascal(500), "2.63889776", table35));
    all.add(
        printed(pressure, "600 K", 1e-6 * SaturationPressure.pascal(600), "12.3443146", table35));
    String temperature = "saturation temperature, K";
    String table36 = "IAPWS R7-97 (IF97) table 36";
    all.add(
        printed(
            temperature, "0.1 MPa", SaturationTemperature.kelvin(0.1e6), "372.755919", table36));
    all.add(
        printed(temperature, "1 MPa", SaturationTemperature.kelvin(1e6), "453.035632", table36));
    all.add(
        printed(temperature, "10 MPa", SaturationTemperature.kelvin(10e6), "584.149488", table36));
  }

  private static void triplePoint(List<PublishedValue> all) {
    double t = 273.16;
    String point = "273.16 K";
    all.add(printed("vapour pressure, Pa", point, SaturationCurve.pascal(t), "611.657", TABLE_1));
    all.add(
        printed(
            "slope of vapour pressure, Pa/K",
            point,
            SaturationCurve.pascalPerKelvin(t),
            "44.436693",
            TABLE_1));
    all.add(
        printed(
            "density of saturated liquid, kg/m³",
            point,
            SaturationCurve.liquidKilogramsPerCubicMetre(t),
            "999.789",
            TABLE_1));
    all.add(
        printed(
            "density of saturated vapour, kg/m³",
            point,
            SaturationCurve.vapourKilogramsPerCubicMetre(t),
            "0.00485426",
            TABLE_1));
    all.add(
        printed(
            "enthalpy of saturated liquid, J/kg",
            point,
            SaturationCurve.liquidJoulesPerKilogram(t),
            "0.611786",
            TABLE_1));
    all.add(
        printed(
            "enthalpy of saturated vapour, kJ/kg",
            point,
            1e-3 * SaturationCurve.vapourJoulesPerKilogram(t),
            "2500.5",
            TABLE_1));
  }

  private static void boilingPoint(List<PublishedValue> all) {
    double t = 373.1243;
    String point = "373.1243 K";
    all.add(
        printed(
            "vapour pressure, MPa", point, 1e-6 * SaturationCurve.pascal(t), "0.101325", TABLE_1));
    all.add(
        printed(
            "slope of vapour pressure, kPa/K",
            point,
            1e-3 * SaturationCurve.pascalPerKelvin(t),
            "3.616",
            TABLE_1));
    all.add(
        printed(
            "density of saturated liquid, kg/m³",
            point,
            SaturationCurve.liquidKilogramsPerCubicMetre(t),
            "958.365",
            TABLE_1));
    all.add(
        printed(
            "density of saturated vapour, kg/m³",
            point,
            SaturationCurve.vapourKilogramsPerCubicMetre(t),
            "0.597586",
            TABLE_1));
    all.add(
        printed(
            "enthalpy of saturated liquid, kJ/kg",
            point,
            1e-3 * SaturationCurve.liquidJoulesPerKilogram(t),
            "419.05",
            TABLE_1));
    all.add(
        printed(
            "enthalpy of saturated vapour, kJ/kg",
            point,
            1e-3 * SaturationCurve.vapourJoulesPerKilogram(t),
            "2675.7",
            TABLE_1));
  }
}
