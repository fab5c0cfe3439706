package dev.tankwright.scenario.file;

import dev.tankwright.controller.board.Chemistry;
import dev.tankwright.controller.board.DeviceProfile;
import dev.tankwright.controller.board.Parameter;
import dev.tankwright.controller.board.Programme;
import dev.tankwright.controller.board.Recipe;
import dev.tankwright.scenario.key.Fields;
import dev.tankwright.scenario.key.Values;
import dev.tankwright.scenario.quantity.Amount;
import dev.tankwright.scenario.quantity.Dimension;
import dev.tankwright.scenario.yaml.Problems;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;

/** Reads the set values beside a start. */
final class RecipeReader {
  private final DeviceProfile profile;
  private final Chemistry chemistry;
  private final Problems problems;
  private final Values values;

  /**
   * Makes a reader.
   *
   * @param chemistry what is said of the chemistry where a start says nothing
   */
  RecipeReader(DeviceProfile profile, Chemistry chemistry, Problems problems) {
    this.profile = profile;
    this.chemistry = chemistry;
    this.problems = problems;
    values = new Values(problems);
  }

  Optional<Recipe> read(Fields fields) {
    Optional<Programme> programme =
        fields
            .required("programme", "programme: MEDIUM")
            .flatMap(text -> values.constant(text, "programme", List.of(Programme.values())));
    if (programme.isEmpty()) {
      return Optional.empty();
    }
    Recipe usual = Recipe.standard(programme.get());
    int setpoint = setpoint(fields, usual);
    int degas = time(fields, "degas", usual.degasMs());
    int clean = usual.cleanMs();
    if (programme.get() == Programme.DEGAS_ONLY) {
      fields.refuse("clean", "does not go with DEGAS_ONLY, which only degasses; leave it out");
    } else {
      clean = time(fields, "clean", usual.cleanMs());
    }
    return Optional.of(
        new Recipe(
            programme.get(),
            setpoint,
            degas,
            clean,
            new ChemistryReader(problems).read(fields, chemistry)));
  }

  private int setpoint(Fields fields, Recipe usual) {
    int least = profile.get(Parameter.SETPOINT_MINIMUM);
    int most = profile.get(Parameter.SETPOINT_MAXIMUM);
    int standard = usual.setpointMilliC();
    if (!fields.has("setpoint") && (standard < least || standard > most)) {
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
    return fields
        .text("setpoint")
        .flatMap(text -> values.milliC(text, "setpoint", celsius(least), celsius(most)))
        .orElse(standard);
  }

  private int time(Fields fields, String key, int usual) {
    int most = profile.get(Parameter.RUN_MAXIMUM);
    return fields
        .text(key)
        .map(text -> values.millis(text, key, 1, most))
        .filter(millis -> millis.isPresent())
        .map(millis -> Math.toIntExact(millis.getAsLong()))
        .orElse(usual);
  }

  private static String celsius(int milliC) {
    return Amount.withUnit(BigDecimal.valueOf(milliC, 3), Dimension.NUMBER);
  }
}
