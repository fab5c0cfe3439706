package dev.tankwright.bench.properties;

import static dev.tankwright.bench.properties.PublishedValue.printed;

import dev.tankwright.plant.properties.PlatinumResistance;
import java.util.ArrayList;
import java.util.List;

/** Published values of the platinum sensor. */
final class SensorValues {
  private SensorValues() {}

  static List<PublishedValue> all() {
    List<PublishedValue> all = new ArrayList<>();
    String equation = "IEC 60751:2022, computed from the published equation";
    int[] celsius = {0, 10, 20, 40, 50, 100};
    String[] ohm = {"100.0000", "103.9025", "107.7935", "115.5408", "119.3971", "138.5055"};
    for (int i = 0; i < celsius.length; i++) {
      all.add(pt100(celsius[i], ohm[i], equation));
    }
    String table = "IEC 60751:2022 table of Pt100, from memory";
    all.add(pt100(-200, "18.52", table));
    all.add(pt100(-100, "60.26", table));
    all.add(pt100(100, "138.51", table));
    all.add(pt100(200, "175.86", table));
    all.add(pt100(850, "390.48", table));
    tolerances(all);
    return all;
  }

  private static PublishedValue pt100(int celsius, String ohm, String source) {
    double ours = 100 * PlatinumResistance.ratio(celsius);
    return printed("resistance of a Pt100, Ω", celsius + " °C", ours, ohm, source);
  }

  private static void tolerances(List<PublishedValue> all) {
    String source = "IEC 60751:2022, classes";
    String classA = "tolerance of class A, K";
    String classB = "tolerance of class B, K";
    all.add(printed(classA, "0 °C", PlatinumResistance.classAKelvin(0), "0.15", source));
    all.add(printed(classA, "-100 °C", PlatinumResistance.classAKelvin(-100), "0.35", source));
    all.add(printed(classB, "0 °C", PlatinumResistance.classBKelvin(0), "0.30", source));
    all.add(printed(classB, "100 °C", PlatinumResistance.classBKelvin(100), "0.80", source));
  }
}
