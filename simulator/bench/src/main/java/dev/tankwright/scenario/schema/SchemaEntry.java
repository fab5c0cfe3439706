package dev.tankwright.scenario.schema;

import dev.tankwright.controller.board.Command;
import dev.tankwright.controller.board.FoilVerdict;
import dev.tankwright.controller.board.Phase;
import dev.tankwright.controller.board.Programme;
import dev.tankwright.loop.Pin;
import dev.tankwright.plant.BasketMove;
import dev.tankwright.plant.PartFault;
import dev.tankwright.scenario.file.ActionReader;
import dev.tankwright.scenario.file.ChemistryReader;
import dev.tankwright.scenario.file.MomentReader;
import dev.tankwright.scenario.file.TimelineReader;
import dev.tankwright.scenario.key.KeyHelp;
import dev.tankwright.scenario.key.ScenarioKeys;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** The schema of an entry of the timeline. */
final class SchemaEntry {
  private SchemaEntry() {}

  static Map<String, Object> document() {
    Map<String, Object> entry =
        SchemaNode.block(
            ScenarioKeys.ENTRY, key -> SchemaNode.described(KeyHelp.entry(key), value(key)));
    entry.put(
        "allOf",
        List.of(
            SchemaNode.of("oneOf", SchemaNode.exactlyOne(MomentReader.MOMENTS)),
            SchemaNode.of("oneOf", actions()),
            SchemaNode.of("if", command("START"), "then", SchemaNode.required("programme"))));
    entry.put("dependentSchemas", dependents());
    return entry;
  }

  private static List<Object> actions() {
    List<Object> choices = SchemaNode.exactlyOne(ActionReader.ACTIONS);
    choices.add(SchemaNode.of("required", List.of("foil"), "not", SchemaNode.required("command")));
    return choices;
  }

  private static Map<String, Object> command(String word) {
    return SchemaNode.of(
        "properties",
        SchemaNode.of("command", SchemaNode.of("const", word)),
        "required",
        List.of("command"));
  }

  private static Map<String, Object> dependents() {
    Map<String, Object> map = new LinkedHashMap<>();
    map.put("after", SchemaNode.besides(List.of("on", "when")));
    map.put("from", SchemaNode.besides(List.of("on", "when", "then")));
    map.put("times", SchemaNode.required("every"));
    map.put("until", SchemaNode.required("every"));
    map.put("size", SchemaNode.required("break"));
    map.put("for", SchemaNode.required("break"));
    map.put("fill", SchemaNode.required("temperature"));
    map.put("temperature", SchemaNode.required("fill"));
    map.put("detergent", SchemaNode.required("fill"));
    ActionReader.RECIPE.forEach(key -> map.put(key, command("START")));
    return map;
  }

  private static Map<String, Object> value(String key) {
    return switch (key) {
      case "name" -> SchemaNode.line(TimelineReader.LONGEST_NAME);
      case "from" -> SchemaNode.line(TimelineReader.LONGEST_NAME);
      case "operator", "load" -> SchemaNode.line(ActionReader.LONGEST_REFERENCE);
      case "on" -> SchemaNode.words(names(Phase.values()));
      case "when" -> SchemaNode.ref("condition");
      case "times" -> SchemaNode.whole(1, MomentReader.MOST_TIMES);
      case "at",
          "after",
          "then",
          "every",
          "until",
          "degas",
          "clean",
          "cut-power",
          "set-clock",
          "for" ->
          SchemaNode.ref("time");
      case "setpoint", "chemistry-maximum", "temperature" -> SchemaNode.ref("temperature");
      case "fill" -> SchemaNode.ref("volume");
      case "detergent" -> SchemaNode.ref("fraction");
      case "force" -> pins();
      case "size" -> SchemaNode.of("type", List.of("string", "number"));
      default -> SchemaNode.words(words(key));
    };
  }

  private static List<String> words(String key) {
    return switch (key) {
      case "command" -> ActionReader.COMMANDS.stream().map(Command::name).toList();
      case "programme" -> names(Programme.values());
      case "chemistry" -> names(ChemistryReader.Kind.values());
      case "foil" -> List.of("hang", FoilVerdict.MARKED.name(), FoilVerdict.UNMARKED.name());
      case "basket" ->
          Arrays.stream(BasketMove.values()).map(m -> m.name().toLowerCase(Locale.ROOT)).toList();
      case "lid" -> List.of("open", "closed");
      case "break", "mend" -> Arrays.stream(PartFault.values()).map(PartFault::key).toList();
      case "release" -> {
        List<String> pins = new ArrayList<>(List.of("all"));
        pins.addAll(Pin.keys());
        yield pins;
      }
      default -> throw new IllegalStateException("no schema is written for the key '" + key + "'");
    };
  }

  private static Map<String, Object> pins() {
    Map<String, Object> pins =
        SchemaNode.block(Pin.keys(), key -> pin(Pin.byKey(key).orElseThrow()));
    pins.put("minProperties", 1);
    return pins;
  }

  private static Map<String, Object> pin(Pin pin) {
    return switch (pin.kind()) {
      case COUNT -> SchemaNode.whole(Integer.MIN_VALUE, (1L << Integer.SIZE) - 1);
      case SWITCH -> SchemaNode.words(List.of("on", "off"));
      case COMMAND -> SchemaNode.words(withAbsent(names(Command.values())));
      case VERDICT -> SchemaNode.words(withAbsent(names(FoilVerdict.values())));
      case RECIPE -> SchemaNode.of("type", "string");
    };
  }

  private static List<String> withAbsent(List<String> names) {
    List<String> words = new ArrayList<>(names);
    words.add(Pin.ABSENT);
    return words;
  }

  private static List<String> names(Enum<?>[] values) {
    return Arrays.stream(values).map(Enum::name).toList();
  }
}
