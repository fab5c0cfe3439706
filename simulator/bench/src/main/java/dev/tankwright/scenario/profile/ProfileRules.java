package dev.tankwright.scenario.profile;

import dev.tankwright.scenario.block.Fields;
import dev.tankwright.scenario.quantity.Plain;
import dev.tankwright.scenario.yaml.Place;
import dev.tankwright.scenario.yaml.Problems;
import dev.tankwright.scenario.yaml.YamlNode;

/** What must hold between the values of a bath profile, each of which lies in its own range. */
final class ProfileRules {
  // Per volume up to the brim; common practice is 40–100 W/L of heat and 10–50 W/L of ultrasound.
  private static final double LEAST_HEAT = 20;
  private static final double MOST_HEAT = 200;
  private static final double LEAST_SOUND = 5;
  private static final double MOST_SOUND = 100;

  private final Fields fields;
  private final ProfileBuilder values;
  private final Problems problems;

  ProfileRules(Fields fields, ProfileBuilder values, Problems problems) {
    this.fields = fields;
    this.values = values;
    this.problems = problems;
  }

  void check() {
    above(ProfileKey.FILL_MARK, ProfileKey.MINIMUM_LEVEL);
    above(ProfileKey.BRIM, ProfileKey.FILL_MARK);
    atMost(ProfileKey.COVERED_AT, values.get(ProfileKey.MINIMUM_LEVEL), "minimum-level");
    // Square metres times millimetres are litres.
    double box = values.get(ProfileKey.SURFACE) * values.get(ProfileKey.TANK_HEIGHT);
    atMost(ProfileKey.BRIM, box, "surface times tank-height");
    density(ProfileKey.HEATER_POWER, LEAST_HEAT, MOST_HEAT);
    density(ProfileKey.ULTRASOUND_POWER, LEAST_SOUND, MOST_SOUND);
    double rest = 1 - values.get(ProfileKey.ULTRASOUND_INTO_LIQUID);
    if (values.get(ProfileKey.ULTRASOUND_INTO_WALL) > rest + 1e-9) {
      report(
          ProfileKey.ULTRASOUND_INTO_WALL,
          "goes with ultrasound-into-liquid to more than 100 %; it must lie from 0 % to "
              + Plain.number(rest * 100, "%"));
    }
  }

  private void above(ProfileKey high, ProfileKey low) {
    double bound = values.get(low);
    if (values.get(high) <= bound) {
      String must = "; it must lie above " + low.key() + ", " + Plain.number(bound, "L");
      report(high, "is " + Plain.number(values.get(high), "L") + must);
    }
  }

  private void atMost(ProfileKey key, double bound, String what) {
    if (values.get(key) > bound * (1 + 1e-9)) {
      String most = Plain.number(bound, "L") + ", which is " + what;
      report(key, "is " + Plain.number(values.get(key), "L") + "; it must be at most " + most);
    }
  }

  private void density(ProfileKey key, double least, double most) {
    double brim = values.get(ProfileKey.BRIM);
    double perLitre = values.get(key) / brim;
    if (perLitre < least || perLitre > most) {
      report(
          key,
          "is "
              + Plain.number(perLitre, "W/L")
              + " with "
              + Plain.number(brim, "L")
              + " to the brim; it must lie from "
              + Plain.number(least * brim, "W")
              + " to "
              + Plain.number(most * brim, "W")
              + ", "
              + Plain.number(least)
              + " to "
              + Plain.number(most, "W/L"));
    }
  }

  /** At the value when the file gives it, else where the file begins: then another one moved. */
  private void report(ProfileKey key, String text) {
    Place place = fields.node(key.key()).map(YamlNode::place).orElseGet(fields::place);
    problems.add(place, key.key() + " " + text);
  }
}
