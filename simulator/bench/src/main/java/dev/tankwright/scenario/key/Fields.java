package dev.tankwright.scenario.key;

import dev.tankwright.scenario.yaml.Nearest;
import dev.tankwright.scenario.yaml.Place;
import dev.tankwright.scenario.yaml.Problems;
import dev.tankwright.scenario.yaml.Quote;
import dev.tankwright.scenario.yaml.YamlNode;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The keys and values of one block of a file, checked against the keys it may have. */
public final class Fields {
  private final String block;
  private final Place place;
  private final Problems problems;
  private final Map<String, YamlNode.Pair> pairs = new LinkedHashMap<>();

  /**
   * Reports unknown keys and keys that are there twice.
   *
   * @param node the block
   * @param block what it is called in messages
   * @param known the keys it may have
   */
  public Fields(YamlNode.Keys node, String block, List<String> known, Problems problems) {
    this.block = block;
    this.place = node.place();
    this.problems = problems;
    for (YamlNode.Pair pair : node.pairs()) {
      check(pair, pairs.putIfAbsent(pair.key().value(), pair), known);
    }
  }

  private void check(YamlNode.Pair pair, YamlNode.Pair first, List<String> known) {
    Place at = pair.key().place();
    String key = pair.key().value();
    if (first != null) {
      String where = "; the first is in " + first.key().place();
      problems.add(at, "the key " + Quote.of(key) + " is here twice; keep one" + where);
    } else if (!known.contains(key)) {
      String hint = problems.isFull() ? "" : Nearest.hint(key, known);
      problems.add(at, "unknown key " + Quote.of(key) + " in " + block + "; " + hint);
    }
  }

  public Place place() {
    return place;
  }

  Problems problems() {
    return problems;
  }

  public boolean has(String key) {
    return pairs.containsKey(key);
  }

  public Place keyPlace(String key) {
    return pairs.get(key).key().place();
  }

  /** The value of a key, whatever it is. */
  public Optional<YamlNode> node(String key) {
    return Optional.ofNullable(pairs.get(key)).map(YamlNode.Pair::value);
  }

  /** The value of a key that must be a single value; empty when it is absent or was reported. */
  public Optional<YamlNode.Text> text(String key) {
    YamlNode node = pairs.containsKey(key) ? pairs.get(key).value() : null;
    if (node == null) {
      return Optional.empty();
    }
    if (node instanceof YamlNode.Text text && !text.isNothing() && !text.value().isBlank()) {
      return Optional.of(text);
    }
    String found = node instanceof YamlNode.Text ? "nothing" : node.noun();
    Place at = node instanceof YamlNode.Text ? keyPlace(key) : node.place();
    problems.add(at, "'" + key + "' needs a single value; here is " + found);
    return Optional.empty();
  }

  /** Like {@link #text}, and reports an absent key. */
  public Optional<YamlNode.Text> required(String key, String example) {
    lacks(key, example);
    return text(key);
  }

  /** Reports an absent key. */
  public void lacks(String key, String example) {
    if (!has(key)) {
      problems.add(place, block + " lacks the key '" + key + "'; for example '" + example + "'");
    }
  }

  /** Reports a key that has no business here. */
  public void refuse(String key, String reason) {
    if (has(key)) {
      problems.add(keyPlace(key), "'" + key + "' " + reason);
    }
  }
}
