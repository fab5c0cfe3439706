package dev.tankwright.scenario.file;

import dev.tankwright.controller.board.Command;
import dev.tankwright.controller.board.FoilVerdict;
import dev.tankwright.controller.board.Programme;
import dev.tankwright.controller.board.Recipe;
import dev.tankwright.loop.Action;
import dev.tankwright.loop.Pin;
import dev.tankwright.loop.PinForce;
import dev.tankwright.scenario.block.Fields;
import dev.tankwright.scenario.block.KeyBlock;
import dev.tankwright.scenario.block.KeyType;
import dev.tankwright.scenario.block.Values;
import dev.tankwright.scenario.key.ActionKeys;
import dev.tankwright.scenario.quantity.Amount;
import dev.tankwright.scenario.quantity.Dimension;
import dev.tankwright.scenario.yaml.Problems;
import dev.tankwright.scenario.yaml.Quote;
import dev.tankwright.scenario.yaml.YamlNode;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.regex.Pattern;

/** Reads which values are forced on which pins, and which pins are released. */
final class ForceReader {
  private static final KeyBlock PINS = KeyBlock.plain("'force'", Pin.keys());
  private static final Pattern COUNT = Pattern.compile("-?[0-9]{1,10}");
  private static final String RECIPE_SHAPE = "'CUSTOM, 40 °C, 20 ms, 10 ms'";

  private final Problems problems;
  private final Values values;

  ForceReader(Problems problems) {
    this.problems = problems;
    values = new Values(problems);
  }

  Optional<Action> force(Fields fields) {
    YamlNode node = fields.node(ActionKeys.FORCE).orElseThrow();
    if (!(node instanceof YamlNode.Keys keys) || keys.pairs().isEmpty()) {
      problems.add(
          node.place(),
          "'force' needs pins with values, as in 'force: {fill-mark: on}', not " + node.noun());
      return Optional.empty();
    }
    Fields pins = new Fields(keys, PINS, problems);
    List<PinForce> forced = new ArrayList<>();
    boolean whole = true;
    for (Pin pin : Pin.values()) {
      if (pins.has(pin.key())) {
        Optional<PinForce> value = pins.text(pin.key()).flatMap(text -> value(pin, text));
        value.ifPresent(forced::add);
        whole &= value.isPresent();
      }
    }
    return whole && !forced.isEmpty() ? Optional.of(new Action.Force(forced)) : Optional.empty();
  }

  Optional<Action> release(Fields fields) {
    return fields
        .word(ActionKeys.RELEASE)
        .map(
            word ->
                new Action.Release(
                    word.equals(ActionKeys.ALL)
                        ? List.of(Pin.values())
                        : List.of(Pin.byKey(word).orElseThrow())));
  }

  private Optional<PinForce> value(Pin pin, YamlNode.Text text) {
    return switch (pin.kind()) {
      case COUNT -> count(pin, text).map(number -> new PinForce(pin, number));
      case SWITCH ->
          values
              .word(text, pin.key(), List.of("on", "off"))
              .map(word -> new PinForce(pin, word.equals("on") ? 1 : 0));
      case COMMAND -> ordinal(pin, text, Command.values());
      case VERDICT -> ordinal(pin, text, FoilVerdict.values());
      case RECIPE -> recipe(pin, text);
    };
  }

  private Optional<Integer> count(Pin pin, YamlNode.Text text) {
    if (COUNT.matcher(text.value()).matches()) {
      long number = Long.parseLong(text.value());
      if (number >= Integer.MIN_VALUE && number < 1L << Integer.SIZE) {
        return Optional.of((int) number);
      }
    }
    problems.add(
        text.place(),
        pin.key()
            + " is "
            + Quote.of(text.value())
            + "; it must be a whole number from -2147483648 to 4294967295");
    return Optional.empty();
  }

  private Optional<PinForce> ordinal(Pin pin, YamlNode.Text text, Enum<?>[] constants) {
    List<String> words = new ArrayList<>(Arrays.stream(constants).map(Enum::name).toList());
    words.add(Pin.ABSENT);
    return values
        .word(text, pin.key(), words)
        .map(word -> word.equals(Pin.ABSENT) ? -1 : words.indexOf(word))
        .map(number -> new PinForce(pin, number));
  }

  /** A recipe that may be one that no operator can give: this is about pins, not about keys. */
  private Optional<PinForce> recipe(Pin pin, YamlNode.Text text) {
    if (text.value().equals(Pin.ABSENT)) {
      return Optional.of(new PinForce(pin, 0));
    }
    List<String> parts = Arrays.stream(text.value().split(",", -1)).map(String::strip).toList();
    if (parts.size() == 4) {
      Optional<Programme> programme =
          values.constant(part(text, parts.get(0)), pin.key(), List.of(Programme.values()));
      OptionalLong setpoint = milli(text, parts.get(1), Dimension.TEMPERATURE);
      OptionalLong degas = milli(text, parts.get(2), Dimension.TIME);
      OptionalLong clean = milli(text, parts.get(3), Dimension.TIME);
      if (programme.isEmpty() || setpoint.isEmpty() || degas.isEmpty() || clean.isEmpty()) {
        return Optional.empty();
      }
      return recipe(text, programme.get(), setpoint, degas, clean)
          .map(recipe -> new PinForce(pin, 0, Optional.of(recipe)));
    }
    problems.add(
        text.place(),
        "recipe is "
            + Quote.of(text.value())
            + "; it must be "
            + Pin.ABSENT
            + ", or programme, setpoint, degassing and cleaning time, as in "
            + RECIPE_SHAPE);
    return Optional.empty();
  }

  private Optional<Recipe> recipe(
      YamlNode.Text text,
      Programme programme,
      OptionalLong setpoint,
      OptionalLong degas,
      OptionalLong clean) {
    try {
      return Optional.of(
          new Recipe(
              programme,
              Math.toIntExact(setpoint.getAsLong()),
              Math.toIntExact(degas.getAsLong()),
              Math.toIntExact(clean.getAsLong())));
    } catch (IllegalArgumentException e) {
      problems.add(text.place(), e.getMessage());
      return Optional.empty();
    }
  }

  private OptionalLong milli(YamlNode.Text text, String part, Dimension dimension) {
    Optional<Amount> amount =
        values.amount(
            part(text, part),
            "recipe",
            dimension,
            "0",
            dimension.equals(Dimension.TIME) ? "86400" : "100");
    return amount.isEmpty()
        ? OptionalLong.empty()
        : values.whole(text, "recipe", amount.get(), KeyType.MILLI);
  }

  private static YamlNode.Text part(YamlNode.Text whole, String part) {
    return new YamlNode.Text(part, whole.place(), -1, false);
  }
}
