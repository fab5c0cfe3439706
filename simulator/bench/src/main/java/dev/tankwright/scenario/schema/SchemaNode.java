package dev.tankwright.scenario.schema;

import dev.tankwright.loop.Signal;
import dev.tankwright.scenario.quantity.AmountParser;
import dev.tankwright.scenario.quantity.Dimension;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Pieces of a JSON Schema (draft 2020-12) as maps in the order in which they are written. */
final class SchemaNode {
  private static final String SPECIAL = "[.*+?^${}()|\\[\\]\\\\/]";

  private SchemaNode() {}

  /** An object from keys and values by turns. */
  static Map<String, Object> of(Object... pairs) {
    Map<String, Object> map = new LinkedHashMap<>();
    for (int i = 0; i < pairs.length; i += 2) {
      map.put((String) pairs[i], pairs[i + 1]);
    }
    return map;
  }

  /** What is known of a key before its value. */
  static Map<String, Object> described(String description, Map<String, Object> shape) {
    Map<String, Object> map = of("description", description);
    map.putAll(shape);
    return map;
  }

  /** A block with these keys and no others. */
  static Map<String, Object> block(Map<String, Object> properties) {
    return of("type", "object", "properties", properties, "additionalProperties", false);
  }

  static Map<String, Object> ref(String definition) {
    return of("$ref", "#/$defs/" + definition);
  }

  /** One line of text; a number or a truth value of YAML is text here too. */
  static Map<String, Object> line(int longest) {
    return of("type", List.of("string", "number", "boolean"), "minLength", 1, "maxLength", longest);
  }

  static Map<String, Object> words(List<String> words) {
    return of("enum", words);
  }

  static Map<String, Object> pattern(String pattern) {
    return of("type", "string", "pattern", "^" + pattern + "$");
  }

  static Map<String, Object> whole(long least, long most) {
    return of("type", "integer", "minimum", least, "maximum", most);
  }

  static Map<String, Object> required(String... keys) {
    return of("required", List.of(keys));
  }

  /** At least one of these. */
  static Map<String, Object> anyOf(List<Object> choices) {
    if (choices.size() > 1) {
      return of("anyOf", choices);
    }
    Map<String, Object> only = new LinkedHashMap<>();
    ((Map<?, ?>) choices.get(0)).forEach((key, value) -> only.put((String) key, value));
    return only;
  }

  /** A quantity with its units. */
  static Map<String, Object> quantity(Dimension dimension) {
    List<String> units = dimension.units().stream().map(Dimension.UnitSymbol::symbol).toList();
    boolean plain = units.contains("");
    String symbols =
        String.join("|", units.stream().filter(u -> !u.isEmpty()).map(SchemaNode::quoted).toList());
    Map<String, Object> text =
        pattern(AmountParser.NUMBER_FORM + (symbols.isEmpty() ? "" : " ?(" + symbols + ")"));
    if (!plain) {
      return text;
    }
    return symbols.isEmpty()
        ? of("type", "number")
        : of("anyOf", List.of(of("type", "number"), text));
  }

  /** A condition, as far as its words go: signals, their words, quantities and signs. */
  static Map<String, Object> condition() {
    List<String> words = new ArrayList<>(List.of("and", "or", "not"));
    for (Signal signal : Signal.all()) {
      words.add(signal.key());
      signal.words().stream().filter(word -> !words.contains(word)).forEach(words::add);
    }
    String word = "(" + String.join("|", words) + ")(?![A-Za-z0-9_-])";
    String amount =
        AmountParser.NUMBER_FORM
            + "( ?(°C|degC|°F|degF|K|L|mL|ms|s|min|h|W|kW|%)(?![A-Za-z0-9_-]))?";
    String sign = "<=|>=|!=|[<>=](?![<>=])|[()]";
    return of(
        "type",
        "string",
        "maxLength",
        1000,
        "pattern",
        "^\\s*((" + word + "|" + amount + "|" + sign + ")\\s*)+$");
  }

  private static String quoted(String text) {
    return text.replaceAll(SPECIAL, "\\\\$0");
  }
}
