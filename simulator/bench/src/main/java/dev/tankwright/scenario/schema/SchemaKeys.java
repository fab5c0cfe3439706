package dev.tankwright.scenario.schema;

import dev.tankwright.scenario.block.Key;
import dev.tankwright.scenario.block.KeyBlock;
import dev.tankwright.scenario.block.KeyType;
import dev.tankwright.scenario.quantity.Dimension;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;

/** The schema of a block, from what its keys say of themselves. */
final class SchemaKeys {
  /** Quantities that are met often are defined once. */
  static final Map<Dimension, String> DEFINED = new EnumMap<>(Dimension.class);

  static {
    DEFINED.put(Dimension.TIME, "time");
    DEFINED.put(Dimension.TEMPERATURE, "temperature");
    DEFINED.put(Dimension.VOLUME, "volume");
    DEFINED.put(Dimension.MASS, "mass");
    DEFINED.put(Dimension.FRACTION, "fraction");
  }

  private final KeyBlock block;
  private final Function<Key, Map<String, Object>> special;

  private SchemaKeys(KeyBlock block, Function<Key, Map<String, Object>> special) {
    this.block = block;
    this.special = special;
  }

  /** A block whose values all say for themselves what they are. */
  static Map<String, Object> block(KeyBlock block) {
    return block(
        block,
        key -> {
          throw new IllegalStateException("no schema is written for the key '" + key.name() + "'");
        });
  }

  /**
   * A block.
   *
   * @param special the value of a key that only its own reader knows
   */
  static Map<String, Object> block(KeyBlock block, Function<Key, Map<String, Object>> special) {
    return new SchemaKeys(block, special).document();
  }

  private Map<String, Object> document() {
    Map<String, Object> properties = new LinkedHashMap<>();
    for (Key key : block.keys()) {
      properties.put(key.name(), SchemaNode.described(key.described(), value(key)));
    }
    for (Key key : block.keys()) {
      key.former().forEach(old -> properties.put(old, former(key)));
    }
    Map<String, Object> document = SchemaNode.block(properties);
    Map<String, Object> dependents = dependents();
    if (!dependents.isEmpty()) {
      document.put("dependentSchemas", dependents);
    }
    return document;
  }

  private Map<String, Object> former(Key key) {
    Map<String, Object> old =
        SchemaNode.of("description", "Called " + key.name() + " now", "deprecated", true);
    old.putAll(value(key));
    return old;
  }

  private Map<String, Object> value(Key key) {
    KeyType type = key.type();
    if (type instanceof KeyType.Line line) {
      return SchemaNode.line(line.longest());
    } else if (type instanceof KeyType.Quantity quantity) {
      String name = DEFINED.get(quantity.dimension());
      return name == null ? SchemaNode.quantity(quantity.dimension()) : SchemaNode.ref(name);
    } else if (type instanceof KeyType.Whole whole) {
      return SchemaNode.whole(whole.least(), whole.most());
    } else if (type instanceof KeyType.Words words) {
      return SchemaNode.words(words.choices());
    } else if (type instanceof KeyType.Form form) {
      return form(form.form());
    }
    return type instanceof KeyType.ConditionText ? SchemaNode.ref("condition") : special.apply(key);
  }

  /** What looks like a number to YAML is text where it has the form. */
  private static Map<String, Object> form(String form) {
    Map<String, Object> text = SchemaNode.pattern(form);
    if ("1".matches(form)) {
      text.put("type", List.of("string", "integer"));
    }
    return text;
  }

  private Map<String, Object> dependents() {
    Map<String, Object> dependents = new LinkedHashMap<>();
    for (Key key : block.keys()) {
      if (!key.companions().isEmpty()) {
        dependents.put(key.name(), SchemaNode.anyOf(companions(block, key.companions())));
      }
      if (!key.needs().isEmpty()) {
        dependents.put(key.name(), SchemaNode.required(key.needs().toArray(String[]::new)));
      }
    }
    return dependents;
  }

  private static List<Object> companions(KeyBlock block, List<String> companions) {
    List<Object> choices = new ArrayList<>();
    for (String companion : companions) {
      String[] parts = companion.split(": ", 2);
      choices.addAll(
          parts.length == 1 ? present(block, parts[0]) : List.of(word(parts[0], parts[1])));
    }
    return choices;
  }

  /** That a key is there, under its name or under one that it had. */
  static List<Object> present(KeyBlock block, String name) {
    List<Object> choices = new ArrayList<>(List.of(SchemaNode.required(name)));
    for (String old : block.find(name).map(Key::former).orElse(List.of())) {
      choices.add(SchemaNode.required(old));
    }
    return choices;
  }

  /** That just one key of a group is there. */
  static List<Object> exactlyOne(KeyBlock block, String group) {
    List<Object> choices = new ArrayList<>();
    block.group(group).forEach(name -> choices.addAll(present(block, name)));
    return choices;
  }

  /** That a key has a certain word. */
  static Map<String, Object> word(String key, String word) {
    return SchemaNode.of(
        "properties", SchemaNode.of(key, SchemaNode.of("const", word)), "required", List.of(key));
  }
}
