package dev.tankwright.scenario.file;

import dev.tankwright.controller.board.Chemistry;
import dev.tankwright.controller.board.Command;
import dev.tankwright.controller.board.DeviceProfile;
import dev.tankwright.controller.board.FoilVerdict;
import dev.tankwright.controller.board.Recipe;
import dev.tankwright.loop.Action;
import dev.tankwright.plant.BasketMove;
import dev.tankwright.scenario.Scenario;
import dev.tankwright.scenario.key.Fields;
import dev.tankwright.scenario.key.Values;
import dev.tankwright.scenario.quantity.Amount;
import dev.tankwright.scenario.quantity.Dimension;
import dev.tankwright.scenario.yaml.Problems;
import dev.tankwright.scenario.yaml.YamlNode;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalLong;

/** Reads what an entry of the timeline does. */
public final class ActionReader {
  /** The keys of which an entry has exactly one; {@code foil} may stand beside a command too. */
  public static final List<String> ACTIONS =
      Arrays.stream(Action.Kind.values())
          .filter(kind -> kind != Action.Kind.HANG_FOIL)
          .map(Action.Kind::key)
          .toList();

  /** Keys that go with START alone. */
  public static final List<String> RECIPE =
      List.of(
          "programme",
          "setpoint",
          "degas",
          "clean",
          "chemistry",
          "chemistry-maximum",
          "operator",
          "load");

  public static final int LONGEST_REFERENCE = 128;
  private static final long FARTHEST_MILLIS = Scenario.LONGEST_MILLIS;
  public static final List<Command> COMMANDS =
      List.copyOf(EnumSet.complementOf(EnumSet.of(Command.NONE)));
  private static final List<FoilVerdict> FOILS = List.of(FoilVerdict.MARKED, FoilVerdict.UNMARKED);
  private static final List<String> FOIL_WORDS = FOILS.stream().map(FoilVerdict::name).toList();
  private static final List<String> MOVES =
      Arrays.stream(BasketMove.values()).map(move -> move.name().toLowerCase(Locale.ROOT)).toList();

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
    refuseCompanions(fields, given.get(0));
    return switch (given.get(0)) {
      case PRESS -> press(fields);
      case MOVE_LID -> lid(fields);
      case BREAK -> breaks.read(fields);
      case REPAIR -> breaks.part(fields, Action.Kind.REPAIR.key()).map(Action.Repair::new);
      case FILL -> fill(fields);
      case MOVE_BASKET -> basket(fields);
      case CUT_POWER -> cutPower(fields);
      case SET_CLOCK -> setClock(fields);
      case FORCE -> forces.force(fields);
      case RELEASE -> forces.release(fields);
      case HANG_FOIL -> foil(fields);
    };
  }

  private void report(Fields fields, List<String> given) {
    String text =
        given.isEmpty()
            ? "this entry does nothing; give it one of " + String.join(", ", ACTIONS) + ", foil"
            : "an entry does one thing, this one has "
                + String.join(" and ", given)
                + "; make it several";
    problems.add(given.isEmpty() ? fields.place() : fields.keyPlace(given.get(1)), text);
  }

  private static void refuseCompanions(Fields fields, Action.Kind kind) {
    if (kind != Action.Kind.FILL) {
      fields.refuse("temperature", "goes only with 'fill'");
      fields.refuse("detergent", "goes only with 'fill'");
    }
    if (kind != Action.Kind.BREAK) {
      fields.refuse("size", "goes only with 'break'");
      fields.refuse("for", "goes only with 'break'");
    }
    if (kind != Action.Kind.PRESS) {
      RECIPE.forEach(key -> fields.refuse(key, "goes only with 'command: START'"));
    }
    if (kind != Action.Kind.PRESS && kind != Action.Kind.HANG_FOIL) {
      fields.refuse("foil", "goes only with 'command: ACKNOWLEDGE'");
    }
  }

  private Optional<Action> press(Fields fields) {
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
      String operator = reference(fields, "operator");
      String load = reference(fields, "load");
      return recipe.map(r -> new Action.Press(Command.START, r, FoilVerdict.NONE, operator, load));
    }
    RECIPE.forEach(key -> fields.refuse(key, "goes only with 'command: START'"));
    return Optional.of(new Action.Press(command.get(), null, foil.orElse(FoilVerdict.NONE)));
  }

  private String reference(Fields fields, String key) {
    return fields.text(key).flatMap(t -> values.line(t, key, LONGEST_REFERENCE)).orElse("");
  }

  private Optional<Action> setClock(Fields fields) {
    Optional<YamlNode.Text> text = fields.text("set-clock");
    OptionalLong by =
        text.isPresent()
            ? values.millis(text.get(), "set-clock", -FARTHEST_MILLIS, FARTHEST_MILLIS)
            : OptionalLong.empty();
    if (by.isPresent() && by.getAsLong() == 0) {
      problems.add(
          text.get().place(),
          "set-clock is 0; give how far the clock is set: -1 h back, 5 min ahead");
      return Optional.empty();
    }
    return by.isPresent() ? Optional.of(new Action.SetClock(by.getAsLong())) : Optional.empty();
  }

  private Optional<Action> lid(Fields fields) {
    return fields
        .text("lid")
        .flatMap(text -> values.word(text, "lid", List.of("open", "closed")))
        .map(word -> new Action.MoveLid(word.equals("open")));
  }

  private Optional<Action> fill(Fields fields) {
    fields.lacks("temperature", "temperature: 19 °C");
    Optional<Amount> litres =
        fields.text("fill").flatMap(t -> values.amount(t, "fill", Dimension.VOLUME, "0.001", brim));
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
    Optional<Amount> detergent =
        fields
            .text("detergent")
            .flatMap(t -> values.amount(t, "detergent", Dimension.FRACTION, "0", "1"));
    return litres.isPresent() && warmth.isPresent()
        ? Optional.of(
            new Action.Fill(
                litres.get().value(),
                warmth.get().value(),
                detergent.map(Amount::value).orElse(1.0)))
        : Optional.empty();
  }

  private Optional<Action> basket(Fields fields) {
    return fields
        .text("basket")
        .flatMap(text -> values.word(text, "basket", MOVES))
        .map(word -> new Action.MoveBasket(BasketMove.values()[MOVES.indexOf(word)]));
  }

  private Optional<Action> cutPower(Fields fields) {
    return fields.text("cut-power").flatMap(this::cutPower);
  }

  private Optional<Action> cutPower(YamlNode.Text text) {
    OptionalLong millis =
        values.millis(text, "cut-power", BreakReader.SHORTEST_MILLIS, Scenario.LONGEST_MILLIS);
    return millis.isPresent()
        ? Optional.of(new Action.CutPower(millis.getAsLong()))
        : Optional.empty();
  }

  private Optional<Action> foil(Fields fields) {
    Optional<YamlNode.Text> text = fields.text("foil");
    boolean verdict = text.map(t -> FOIL_WORDS.contains(t.value())).orElse(false);
    if (verdict) {
      fields.refuse("foil", "goes only with 'command: ACKNOWLEDGE' as a verdict");
      return Optional.empty();
    }
    return text.flatMap(t -> values.word(t, "foil", List.of("hang")))
        .map(word -> new Action.HangFoil());
  }
}
