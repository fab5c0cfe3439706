package dev.tankwright.scenario;

import dev.tankwright.controller.board.Command;
import dev.tankwright.controller.board.DeviceProfile;
import dev.tankwright.controller.board.FoilVerdict;
import dev.tankwright.controller.board.Recipe;
import dev.tankwright.loop.Deed;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;

/** Reads what an entry of the timeline does. */
final class DeedReader {
  private static final List<String> DEEDS = List.of("command", "lid", "break", "mend", "fill");
  private static final List<String> RECIPE = List.of("programme", "setpoint", "degas", "clean");
  private static final List<Command> COMMANDS =
      List.copyOf(EnumSet.complementOf(EnumSet.of(Command.NONE)));
  private static final List<FoilVerdict> FOILS = List.of(FoilVerdict.MARKED, FoilVerdict.UNMARKED);

  private final Problems problems;
  private final Values values;
  private final RecipeReader recipes;
  private final BreakReader breaks;

  DeedReader(DeviceProfile profile, Problems problems) {
    this.problems = problems;
    values = new Values(problems);
    recipes = new RecipeReader(profile, problems);
    breaks = new BreakReader(problems);
  }

  Optional<Deed> read(Fields fields) {
    List<String> given = DEEDS.stream().filter(fields::has).toList();
    if (given.size() != 1) {
      String text =
          given.isEmpty()
              ? "this entry does nothing; give it one of " + String.join(", ", DEEDS)
              : "an entry does one thing, this one has "
                  + String.join(" and ", given)
                  + "; make it several";
      problems.add(given.isEmpty() ? fields.place() : fields.keyPlace(given.get(1)), text);
      return Optional.empty();
    }
    refuseCompanions(fields, given.get(0));
    return switch (given.get(0)) {
      case "command" -> press(fields);
      case "lid" -> lid(fields);
      case "fill" -> fill(fields);
      case "break" -> breaks.read(fields);
      default -> breaks.part(fields, "mend").map(Deed.Mend::new);
    };
  }

  private static void refuseCompanions(Fields fields, String deed) {
    if (!deed.equals("fill")) {
      fields.refuse("temperature", "goes only with 'fill'");
    }
    if (!deed.equals("break")) {
      fields.refuse("size", "goes only with 'break'");
      fields.refuse("for", "goes only with 'break'");
    }
    if (!deed.equals("command")) {
      RECIPE.forEach(key -> fields.refuse(key, "goes only with 'command: START'"));
      fields.refuse("foil", "goes only with 'command: ACKNOWLEDGE'");
    }
  }

  private Optional<Deed> press(Fields fields) {
    Optional<Command> command =
        fields.text("command").flatMap(text -> values.constant(text, "command", COMMANDS));
    if (command.isEmpty()) {
      return Optional.empty();
    }
    Optional<FoilVerdict> foil = Optional.empty();
    if (command.get() == Command.ACKNOWLEDGE) {
      foil = fields.text("foil").flatMap(text -> values.constant(text, "foil", FOILS));
    } else {
      fields.refuse("foil", "goes only with 'command: ACKNOWLEDGE'");
    }
    if (command.get() == Command.START) {
      Optional<Recipe> recipe = recipes.read(fields);
      return recipe.map(r -> new Deed.Press(Command.START, r, FoilVerdict.NONE));
    }
    RECIPE.forEach(key -> fields.refuse(key, "goes only with 'command: START'"));
    return Optional.of(new Deed.Press(command.get(), null, foil.orElse(FoilVerdict.NONE)));
  }

  private Optional<Deed> lid(Fields fields) {
    return fields
        .text("lid")
        .flatMap(text -> values.word(text, "lid", List.of("open", "closed")))
        .map(word -> new Deed.MoveLid(word.equals("open")));
  }

  private Optional<Deed> fill(Fields fields) {
    fields.lacks("temperature", "temperature: 19 °C");
    Optional<Amount> litres =
        fields
            .text("fill")
            .flatMap(t -> values.amount(t, "fill", Dimension.VOLUME, "0.001", BathReader.BRIM));
    Optional<Amount> warmth =
        fields
            .text("temperature")
            .flatMap(
                t ->
                    values.amount(
                        t,
                        "temperature",
                        Dimension.TEMPERATURE,
                        BathReader.COLDEST,
                        BathReader.WARMEST));
    return litres.isPresent() && warmth.isPresent()
        ? Optional.of(new Deed.Fill(litres.get().value(), warmth.get().value()))
        : Optional.empty();
  }
}
