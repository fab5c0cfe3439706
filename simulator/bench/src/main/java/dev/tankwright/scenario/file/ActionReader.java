package dev.tankwright.scenario.file;

import dev.tankwright.controller.board.Chemistry;
import dev.tankwright.controller.board.Command;
import dev.tankwright.controller.board.DeviceProfile;
import dev.tankwright.controller.board.FoilVerdict;
import dev.tankwright.controller.board.Recipe;
import dev.tankwright.loop.Action;
import dev.tankwright.plant.BasketMove;
import dev.tankwright.scenario.block.Fields;
import dev.tankwright.scenario.block.Key;
import dev.tankwright.scenario.block.Values;
import dev.tankwright.scenario.key.ActionKeys;
import dev.tankwright.scenario.quantity.Amount;
import dev.tankwright.scenario.yaml.Problems;
import dev.tankwright.scenario.yaml.YamlNode;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;

/** Reads what an entry of the timeline does. */
final class ActionReader {
  private static final String FOIL = ActionKeys.FOIL.name();

  private final String brim;
  private final Problems problems;
  private final Values values;
  private final RecipeReader recipes;
  private final BreakReader breaks;
  private final ForceReader forces;

  /**
   * Makes a reader.
   *
   * @param brim volume that the tank holds at most, L
   * @param chemistry what is said of the chemistry where a start says nothing
   */
  ActionReader(DeviceProfile profile, String brim, Chemistry chemistry, Problems problems) {
    this.brim = brim;
    this.problems = problems;
    values = new Values(problems);
    recipes = new RecipeReader(profile, chemistry, problems);
    breaks = new BreakReader(problems);
    forces = new ForceReader(problems);
  }

  Optional<Action> read(Fields fields) {
    List<Action.Kind> given =
        Arrays.stream(Action.Kind.values()).filter(kind -> fields.has(kind.key())).toList();
    if (given.size() > 1) {
      given = given.stream().filter(kind -> kind != Action.Kind.HANG_FOIL).toList();
    }
    if (given.size() != 1) {
      report(fields, given.stream().map(Action.Kind::key).toList());
      return Optional.empty();
    }
    Action.Kind kind = given.get(0);
    refuseCompanions(fields, kind);
    return switch (kind) {
      case PRESS -> press(fields);
      case MOVE_LID ->
          fields.constant(ActionKeys.LID, List.of(true, false)).map(Action.MoveLid::new);
      case BREAK -> breaks.read(fields);
      case REPAIR -> BreakReader.part(fields, ActionKeys.REPAIR).map(Action.Repair::new);
      case FILL -> fill(fields);
      case MOVE_BASKET ->
          fields
              .constant(ActionKeys.BASKET, List.of(BasketMove.values()))
              .map(Action.MoveBasket::new);
      case CUT_POWER -> cutPower(fields);
      case SET_CLOCK -> setClock(fields);
      case FORCE -> forces.force(fields);
      case RELEASE -> forces.release(fields);
      case HANG_FOIL -> foil(fields);
    };
  }

  private void report(Fields fields, List<String> given) {
    List<String> all = new ArrayList<>(ActionKeys.BLOCK.group(ActionKeys.ACTION));
    all.add(FOIL);
    String text =
        given.isEmpty()
            ? "this entry does nothing; give it one of " + String.join(", ", all)
            : "an entry does one thing, this one has "
                + String.join(" and ", given)
                + "; make it several";
    problems.add(given.isEmpty() ? fields.place() : fields.keyPlace(given.get(1)), text);
  }

  private static void refuseCompanions(Fields fields, Action.Kind kind) {
    List<Key> lonely = new ArrayList<>(ActionKeys.BLOCK.keys());
    if (kind == Action.Kind.PRESS) {
      // Not before the command is known to be one.
      lonely.removeAll(ActionKeys.RECIPE);
    } else if (kind != Action.Kind.HANG_FOIL) {
      fields.refuse(FOIL, "goes only with 'command: ACKNOWLEDGE'");
    }
    fields.refuseLonely(lonely);
  }

  private Optional<Action> press(Fields fields) {
    Optional<Command> command = fields.constant(ActionKeys.COMMAND, ActionKeys.COMMANDS);
    if (command.isEmpty()) {
      return Optional.empty();
    }
    fields.refuseLonely(ActionKeys.RECIPE);
    FoilVerdict verdict = FoilVerdict.NONE;
    if (command.get() == Command.ACKNOWLEDGE) {
      verdict = verdict(fields);
    } else {
      fields.refuse(FOIL, "goes only with 'command: ACKNOWLEDGE'");
    }
    if (command.get() == Command.START) {
      Optional<Recipe> recipe = recipes.read(fields);
      String operator = fields.line(ActionKeys.OPERATOR).orElse("");
      String load = fields.line(ActionKeys.LOAD).orElse("");
      return recipe.map(r -> new Action.Press(Command.START, r, FoilVerdict.NONE, operator, load));
    }
    return Optional.of(new Action.Press(command.get(), null, verdict));
  }

  private FoilVerdict verdict(Fields fields) {
    Optional<YamlNode.Text> text = fields.text(ActionKeys.FOIL);
    List<String> words = ActionKeys.VERDICTS.stream().map(FoilVerdict::name).toList();
    return text.flatMap(t -> values.word(t, FOIL, words))
        .map(FoilVerdict::valueOf)
        .orElse(FoilVerdict.NONE);
  }

  private Optional<Action> setClock(Fields fields) {
    OptionalLong by = fields.steps(ActionKeys.SET_CLOCK);
    if (by.isPresent() && by.getAsLong() == 0) {
      problems.add(
          fields.text(ActionKeys.SET_CLOCK).orElseThrow().place(),
          "set-clock is 0; give how far the clock is set: -1 h back, 5 min ahead");
      return Optional.empty();
    }
    return by.isPresent() ? Optional.of(new Action.SetClock(by.getAsLong())) : Optional.empty();
  }

  private Optional<Action> fill(Fields fields) {
    fields.lacksNeeds(ActionKeys.FILL);
    Optional<Amount> litres = fields.amount(ActionKeys.FILL, brim);
    Optional<Amount> warmth = fields.amount(ActionKeys.TEMPERATURE);
    double detergent = fields.value(ActionKeys.DETERGENT);
    return litres.isPresent() && warmth.isPresent()
        ? Optional.of(new Action.Fill(litres.get().value(), warmth.get().value(), detergent))
        : Optional.empty();
  }

  private static Optional<Action> cutPower(Fields fields) {
    OptionalLong millis = fields.steps(ActionKeys.CUT_POWER);
    return millis.isPresent()
        ? Optional.of(new Action.CutPower(millis.getAsLong()))
        : Optional.empty();
  }

  private Optional<Action> foil(Fields fields) {
    Optional<YamlNode.Text> text = fields.text(ActionKeys.FOIL);
    boolean verdict =
        text.map(t -> ActionKeys.VERDICTS.stream().anyMatch(v -> v.name().equals(t.value())))
            .orElse(false);
    if (verdict) {
      fields.refuse(FOIL, "goes only with 'command: ACKNOWLEDGE' as a verdict");
      return Optional.empty();
    }
    return text.flatMap(t -> values.word(t, FOIL, List.of(ActionKeys.HANG)))
        .map(word -> new Action.HangFoil());
  }
}
