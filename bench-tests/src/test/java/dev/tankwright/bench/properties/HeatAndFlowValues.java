package dev.tankwright.bench.properties;

import static dev.tankwright.bench.properties.PublishedValue.printed;
import static dev.tankwright.bench.properties.PublishedValue.within;

import dev.tankwright.plant.properties.CarrierEvaporation;
import dev.tankwright.plant.properties.Celsius;
import dev.tankwright.plant.properties.HorizontalPlateConvection;
import dev.tankwright.plant.properties.ShahEvaporation;
import dev.tankwright.plant.properties.ThermalRadiation;
import dev.tankwright.plant.properties.Torricelli;
import dev.tankwright.plant.properties.VerticalPlateConvection;
import dev.tankwright.plant.properties.WaterDensity;
import dev.tankwright.plant.properties.WaterSpecificHeat;
import java.util.ArrayList;
import java.util.List;

/** Published values of convection, evaporation, radiation, outflow and heating. */
final class HeatAndFlowValues {
  private static final double ATMOSPHERE = 101_325;
  private static final double MEAN_DEVIATION_OF_SHAH = 0.18;

  private HeatAndFlowValues() {}

  static List<PublishedValue> all() {
    List<PublishedValue> all = new ArrayList<>();
    convection(all);
    evaporation(all);
    shahTable(all);
    radiation(all);
    outflow(all);
    heating(all);
    return all;
  }

  private static void convection(List<PublishedValue> all) {
    String source = "Churchill and Chu 1975, all Ra, computed from the published equation";
    String[] values = {"9.213", "16.558", "31.213"};
    String[] points = {"1e5", "1e6", "1e7"};
    for (int i = 0; i < points.length; i++) {
      double ours = VerticalPlateConvection.nusselt(Double.parseDouble(points[i]), 0.71);
      all.add(
          printed(
              "Nusselt, vertical plate", "Ra " + points[i] + ", Pr 0.71", ours, values[i], source));
    }
    String horizontal = "McAdams form, computed by hand, constants from memory";
    all.add(
        printed(
            "Nusselt, horizontal plate",
            "Ra 1e4",
            HorizontalPlateConvection.nusselt(1e4),
            "5.40",
            horizontal));
    all.add(
        printed(
            "Nusselt, horizontal plate",
            "Ra 1e9",
            HorizontalPlateConvection.nusselt(1e9),
            "150.0",
            horizontal));
  }

  private static void evaporation(List<PublishedValue> all) {
    double water = Celsius.toKelvin(50);
    double air = Celsius.toKelvin(20);
    String property = "evaporation, kg/(m² h)";
    String point = "water 50 °C, air 20 °C, 50 %";
    double shah = ShahEvaporation.kilogramsPerSquareMetreHour(water, air, 0.5, ATMOSPHERE);
    double carrier = CarrierEvaporation.kilogramsPerSquareMetreHour(water, air, 0.5);
    all.add(
        printed(property, point, shah, "1.63", "Shah 2002, computed from the published equation"));
    all.add(
        printed(
            property,
            point,
            carrier,
            "1.50",
            "ASHRAE/Carrier, computed from the published equation"));
    all.add(
        within(
            property,
            point + ", Carrier by Shah",
            carrier,
            "1.63",
            MEAN_DEVIATION_OF_SHAH,
            "Shah 2002, within its mean deviation from data"));
  }

  private static void shahTable(List<PublishedValue> all) {
    // The author's own properties of moist air differ by some tenths of a percent.
    String source = "table of Shah 2014 (ASHRAE Trans. 120-2), seen at second hand";
    String[][] table = {
      {"0.1360", "0.1171", "0.0968"},
      {"0.1651", "0.1463", "0.1268"},
      {"0.1959", "0.1771", "0.1575"}
    };
    for (int water = 0; water < table.length; water++) {
      for (int air = 0; air < table[water].length; air++) {
        double ours =
            ShahEvaporation.kilogramsPerSquareMetreHour(
                Celsius.toKelvin(28 + water), Celsius.toKelvin(28 + air), 0.5, ATMOSPHERE);
        String point = "water " + (28 + water) + " °C, air " + (28 + air) + " °C, 50 %";
        all.add(within("evaporation, kg/(m² h)", point, ours, table[water][air], 0.01, source));
      }
    }
  }

  private static void radiation(List<PublishedValue> all) {
    all.add(
        printed(
            "radiation, W/m²",
            "black, 1000 K to 0 K",
            ThermalRadiation.wattsPerSquareMetre(1, 1000, 0),
            "56703.74419",
            "CODATA 2018, Stefan–Boltzmann constant"));
    all.add(
        printed(
            "radiation, W/m²",
            "emissivity 0.5, 0 K to 300 K",
            ThermalRadiation.wattsPerSquareMetre(0.5, 0, 300),
            "-229.650",
            "CODATA 2018, computed from the published equation"));
  }

  private static void outflow(List<PublishedValue> all) {
    String source = "Torricelli's law, computed; coefficient from memory";
    all.add(printed("time to drain, s", "0.05 m², 0.1 m, 8 mm", drain(0.008), "233", source));
    all.add(printed("time to drain, s", "0.05 m², 0.1 m, 10 mm", drain(0.010), "149", source));
  }

  private static double drain(double bore) {
    double opening = Math.PI / 4 * bore * bore;
    return Torricelli.drainSeconds(Torricelli.SHARP_EDGE, opening, 0.05, 0.1, 0);
  }

  private static void heating(List<PublishedValue> all) {
    String source = "energy balance, no losses, computed";
    all.add(printed("20 to 50 °C, min", "60 W/L", heatingMinutes(60), "34.8", source));
    all.add(printed("20 to 50 °C, min", "100 W/L", heatingMinutes(100), "20.9", source));
  }

  /** The litre is measured where it is poured, at 20 °C. */
  private static double heatingMinutes(double wattsPerLitre) {
    double joulesPerKilogram = 0;
    for (double celsius = 20.5; celsius < 50; celsius++) {
      joulesPerKilogram += WaterSpecificHeat.joulesPerKilogramKelvin(Celsius.toKelvin(celsius));
    }
    double kilogramsPerLitre = WaterDensity.kilogramsPerCubicMetre(Celsius.toKelvin(20)) / 1000;
    return kilogramsPerLitre * joulesPerKilogram / wattsPerLitre / 60;
  }
}
