package dev.tankwright.bench.properties;

import static dev.tankwright.bench.properties.PublishedValue.printed;
import static dev.tankwright.bench.properties.PublishedValue.within;

import dev.tankwright.plant.properties.Celsius;
import dev.tankwright.plant.properties.SurfaceTension;
import dev.tankwright.plant.properties.WaterConductivity;
import dev.tankwright.plant.properties.WaterDensity;
import dev.tankwright.plant.properties.WaterSoundSpeed;
import dev.tankwright.plant.properties.WaterSpecificHeat;
import dev.tankwright.plant.properties.WaterViscosity;
import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;

/** Published values of liquid water and its surface. */
final class WaterValues {
  private static final int[] CELSIUS = {0, 10, 20, 40, 50};
  private static final String COMPUTED = ", computed from the published equation";
  private static final String TABLE_8 = "IAPWS SR6-08(2011) table 8";

  private WaterValues() {}

  static List<PublishedValue> all() {
    List<PublishedValue> all = new ArrayList<>();
    atCelsius(all);
    table8(all, "260 K", 260, "997.068360", "4300.17472", "3058.36075", "-3.86550941");
    table8(all, "298.15 K", 298.15, "997.047013", "4181.44618", "889.996774", "2.58054178");
    table8(all, "375 K", 375, "957.009710", "4217.74697", "276.207245", "7.94706623");
    conductivity(all);
    surface(all);
    sound(all);
    return all;
  }

  private static void atCelsius(List<PublishedValue> all) {
    String source = "IAPWS SR6-08(2011)" + COMPUTED;
    row(
        all,
        "density of water, kg/m³",
        WaterDensity::kilogramsPerCubicMetre,
        source,
        "999.842",
        "999.702",
        "998.207",
        "992.216",
        "988.035");
    row(
        all,
        "specific heat of water, J/(kg K)",
        WaterSpecificHeat::joulesPerKilogramKelvin,
        source,
        "4219.3",
        "4195.1",
        "4184.2",
        "4179.4",
        "4181.2");
    row(
        all,
        "viscosity of water, µPa s",
        t -> 1e6 * WaterViscosity.pascalSeconds(t),
        source,
        "1791.8",
        "1305.9",
        "1001.6",
        "652.7",
        "546.5");
    row(
        all,
        "surface tension, mN/m",
        t -> 1e3 * SurfaceTension.newtonsPerMetre(t),
        "IAPWS R1-76(2014)" + COMPUTED,
        "75.648",
        "74.221",
        "72.736",
        "69.596",
        "67.944");
    row(
        all,
        "speed of sound in water, m/s",
        t -> WaterSoundSpeed.metresPerSecond(Celsius.fromKelvin(t)),
        "Marczak 1997" + COMPUTED,
        "1402.385",
        "1447.289",
        "1482.380",
        "1528.894",
        "1542.565");
  }

  private static void row(
      List<PublishedValue> all,
      String property,
      DoubleUnaryOperator ofKelvin,
      String source,
      String... values) {
    for (int i = 0; i < CELSIUS.length; i++) {
      double ours = ofKelvin.applyAsDouble(Celsius.toKelvin(CELSIUS[i]));
      all.add(printed(property, CELSIUS[i] + " °C", ours, values[i], source));
    }
  }

  private static void table8(
      List<PublishedValue> all,
      String point,
      double kelvin,
      String density,
      String heat,
      String viscosity,
      String volumeByKelvin) {
    double ours = WaterDensity.kilogramsPerCubicMetre(kelvin);
    all.add(printed("density of water, kg/m³", point, ours, density, TABLE_8));
    all.add(
        printed(
            "specific heat of water, J/(kg K)",
            point,
            WaterSpecificHeat.joulesPerKilogramKelvin(kelvin),
            heat,
            TABLE_8));
    all.add(
        printed(
            "viscosity of water, µPa s",
            point,
            1e6 * WaterViscosity.pascalSeconds(kelvin),
            viscosity,
            TABLE_8));
    all.add(
        printed(
            "(∂v/∂T)p of water, 1e-7 m³/(kg K)",
            point,
            1e7 * WaterDensity.expansionPerKelvin(kelvin) / ours,
            volumeByKelvin,
            TABLE_8));
  }

  private static void conductivity(List<PublishedValue> all) {
    String property = "conductivity of water, W/(m K)";
    all.add(
        printed(
            property,
            "298.15 K",
            WaterConductivity.wattsPerMetreKelvin(298.15),
            "0.606502308",
            TABLE_8));
    all.add(
        printed(
            property, "375 K", WaterConductivity.wattsPerMetreKelvin(375), "0.677913788", TABLE_8));
  }

  private static void surface(List<PublishedValue> all) {
    String property = "surface tension, mN/m";
    String check = "IAPWS R1-76(2014), program verification";
    all.add(printed(property, "300 K", tension(300), "71.6859625", check));
    all.add(printed(property, "450 K", tension(450), "42.8914992", check));
    String table = "IAPWS R1-76(2014) table 1, from memory";
    all.add(printed(property, "25 °C", tension(298.15), "71.97", table));
    all.add(printed(property, "100 °C", tension(373.15), "58.91", table));
    all.add(printed(property, "150 °C", tension(423.15), "48.74", table));
    all.add(printed(property, "200 °C", tension(473.15), "37.67", table));
    all.add(printed(property, "300 °C", tension(573.15), "14.36", table));
  }

  private static double tension(double kelvin) {
    return 1e3 * SurfaceTension.newtonsPerMetre(kelvin);
  }

  private static void sound(List<PublishedValue> all) {
    // Two independent sources of one property: they agree within 20 parts in a million.
    all.add(
        within(
            "speed of sound in water, m/s",
            "298.15 K",
            WaterSoundSpeed.metresPerSecond(25),
            "1496.69922",
            2e-5,
            TABLE_8 + ", another formulation"));
    all.add(
        within(
            "speed of sound in water, m/s",
            "0.001 °C",
            WaterSoundSpeed.metresPerSecond(0.001),
            "1402.39",
            2e-5,
            "Del Grosso and Mader 1972 polynomial, from memory"));
  }
}
