package dev.tankwright.scenario.file;

import dev.tankwright.controller.board.Chemistry;
import dev.tankwright.controller.board.DeviceProfile;
import dev.tankwright.controller.board.Parameter;
import dev.tankwright.controller.board.Programme;
import dev.tankwright.controller.board.Recipe;
import dev.tankwright.scenario.block.Fields;
import dev.tankwright.scenario.block.Key;
import dev.tankwright.scenario.block.KeyType;
import dev.tankwright.scenario.key.ActionKeys;
import dev.tankwright.scenario.quantity.Amount;
import dev.tankwright.scenario.quantity.Dimension;
import dev.tankwright.scenario.yaml.Problems;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;

/** Reads the set values beside a start. */
final class RecipeReader {
  private final DeviceProfile profile;
  private final Chemistry chemistry;
  private final Problems problems;

  /**
   * Makes a reader.
   *
   * @param chemistry what is said of the chemistry where a start says nothing
   */
  RecipeReader(DeviceProfile profile, Chemistry chemistry, Problems problems) {
    this.profile = profile;
    this.chemistry = chemistry;
    this.problems = problems;
  }

  Optional<Recipe> read(Fields fields) {
    fields.lacks(ActionKeys.PROGRAMME);
    Optional<Programme> programme =
        fields.constant(ActionKeys.PROGRAMME, List.of(Programme.values()));
    if (programme.isEmpty()) {
      return Optional.empty();
    }
    Recipe usual = Recipe.standard(programme.get());
    int setpoint = setpoint(fields, usual);
    int degas = time(fields, ActionKeys.DEGAS, usual.degasMs());
    int clean = usual.cleanMs();
    if (programme.get() == Programme.DEGAS_ONLY) {
      fields.refuse("clean", "does not go with DEGAS_ONLY, which only degasses; leave it out");
    } else {
      clean = time(fields, ActionKeys.CLEAN, usual.cleanMs());
    }
    return Optional.of(
        new Recipe(
            programme.get(),
            setpoint,
            degas,
            clean,
            ChemistryReader.read(
                fields, ActionKeys.CHEMISTRY, ActionKeys.CHEMISTRY_MAXIMUM, chemistry)));
  }

  private int setpoint(Fields fields, Recipe usual) {
    int least = profile.get(Parameter.SETPOINT_MINIMUM);
    int most = profile.get(Parameter.SETPOINT_MAXIMUM);
    int standard = usual.setpointMilliC();
    if (!fields.has(ActionKeys.SETPOINT) && (standard < least || standard > most)) {
      problems.add(
          fields.place(),
          usual.programme()
              + " runs at "
              + celsius(standard)
              + " °C, but this controller allows "
              + celsius(least)
              + " °C to "
              + celsius(most)
              + " °C; give a setpoint");
    }
    OptionalLong given = fields.steps(ActionKeys.SETPOINT, celsius(least), celsius(most));
    return given.isPresent() ? Math.toIntExact(given.getAsLong()) : standard;
  }

  private int time(Fields fields, Key key, int usual) {
    String most = KeyType.seconds(profile.get(Parameter.RUN_MAXIMUM));
    OptionalLong given = fields.steps(key, most);
    return given.isPresent() ? Math.toIntExact(given.getAsLong()) : usual;
  }

  private static String celsius(int milliC) {
    return Amount.withUnit(BigDecimal.valueOf(milliC, 3), Dimension.NUMBER);
  }
}
