package dev.tankwright.scenario.block;

import dev.tankwright.scenario.condition.Condition;
import dev.tankwright.scenario.quantity.Amount;
import dev.tankwright.scenario.yaml.Nearest;
import dev.tankwright.scenario.yaml.Place;
import dev.tankwright.scenario.yaml.Problems;
import dev.tankwright.scenario.yaml.Quote;
import dev.tankwright.scenario.yaml.YamlNode;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;

/**
 * The keys and values of one block of a file, checked against the keys it may have. Values come out
 * typed; what is wrong with one is reported, and it is empty.
 */
public final class Fields {
  private final KeyBlock block;
  private final Place place;
  private final Problems problems;
  private final Values values;
  private final Map<String, YamlNode.Pair> pairs = new LinkedHashMap<>();

  /** Reports unknown keys and keys that are there twice, and warns of old names. */
  public Fields(YamlNode.Keys node, KeyBlock block, Problems problems) {
    this.block = block;
    this.place = node.place();
    this.problems = problems;
    values = new Values(problems);
    node.pairs().forEach(this::add);
  }

  private void add(YamlNode.Pair pair) {
    Place at = pair.key().place();
    String written = pair.key().value();
    Optional<Key> renamed = block.formerly(written);
    String name = renamed.map(Key::name).orElse(written);
    YamlNode.Pair first = pairs.putIfAbsent(name, pair);
    if (first != null) {
      String where = "; the first is in " + first.key().place();
      problems.add(at, "the key " + Quote.of(name) + " is here twice; keep one" + where);
    } else if (renamed.isPresent()) {
      problems.warn(at, "old key: " + Quote.of(written) + " is called '" + name + "' now" + LAST);
    } else if (block.find(name).isEmpty()) {
      String hint = problems.isFull() ? "" : Nearest.hint(name, block.names());
      problems.add(at, "unknown key " + Quote.of(name) + " in " + block.called() + "; " + hint);
    }
  }

  private static final String LAST = "; the next version does not read the old name any more";

  /** Where the block begins. */
  public Place place() {
    return place;
  }

  /** Whether a key is there. */
  public boolean has(String key) {
    return pairs.containsKey(key);
  }

  /** Whether a key is there. */
  public boolean has(Key key) {
    return has(key.name());
  }

  /** Which keys of a group are there. */
  public List<String> given(String group) {
    return block.group(group).stream().filter(this::has).toList();
  }

  /** Where a key stands that is there. */
  public Place keyPlace(String key) {
    return pairs.get(key).key().place();
  }

  /** Where a key stands that is there. */
  public Place keyPlace(Key key) {
    return keyPlace(key.name());
  }

  /** The value of a key, whatever it is. */
  public Optional<YamlNode> node(String key) {
    return Optional.ofNullable(pairs.get(key)).map(YamlNode.Pair::value);
  }

  /** The value of a key, whatever it is. */
  public Optional<YamlNode> node(Key key) {
    return node(key.name());
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

  /** The value of a key that must be a single value. */
  public Optional<YamlNode.Text> text(Key key) {
    return text(key.name());
  }

  /** One line. */
  public Optional<String> line(Key key) {
    int longest = ((KeyType.Line) key.type()).longest();
    return text(key).flatMap(text -> values.line(text, key.name(), longest));
  }

  /** A quantity in its own range. */
  public Optional<Amount> amount(Key key) {
    return amount(key, ((KeyType.Quantity) key.type()).most());
  }

  /** A quantity of which the scenario at hand says how great it may be, in its base unit. */
  public Optional<Amount> amount(Key key, String most) {
    return amount(key, ((KeyType.Quantity) key.type()).least(), most);
  }

  private Optional<Amount> amount(Key key, String least, String most) {
    KeyType.Quantity type = (KeyType.Quantity) key.type();
    return text(key)
        .flatMap(text -> values.amount(text, key.name(), type.dimension(), least, most));
  }

  /** A quantity in its base unit; the key's default where it is absent or was reported. */
  public double value(Key key) {
    return amount(key).orElseGet(() -> values.standard(key)).value();
  }

  /** A quantity in the steps in which it comes, for times ms. */
  public OptionalLong steps(Key key) {
    return steps(key, ((KeyType.Quantity) key.type()).most());
  }

  /** A quantity in its steps, of which the scenario at hand says how great it may be. */
  public OptionalLong steps(Key key, String most) {
    return steps(key, ((KeyType.Quantity) key.type()).least(), most);
  }

  /** A quantity in its steps, of which the scenario at hand says what it may be. */
  public OptionalLong steps(Key key, String least, String most) {
    Optional<Amount> amount = amount(key, least, most);
    int perUnit = ((KeyType.Quantity) key.type()).perUnit();
    return amount.isPresent()
        ? values.whole(text(key).orElseThrow(), key.name(), amount.get(), perUnit)
        : OptionalLong.empty();
  }

  /** A whole number. */
  public OptionalLong whole(Key key) {
    KeyType.Whole type = (KeyType.Whole) key.type();
    Optional<YamlNode.Text> text = text(key);
    return text.isPresent()
        ? values.whole(text.get(), key.name(), type.least(), type.most())
        : OptionalLong.empty();
  }

  /** One of the key's words. */
  public Optional<String> word(Key key) {
    List<String> words = ((KeyType.Words) key.type()).choices();
    return text(key).flatMap(text -> values.word(text, key.name(), words));
  }

  /** One of the key's words, each of which stands for a constant in the same place of a list. */
  public <E> Optional<E> constant(Key key, List<E> constants) {
    List<String> words = ((KeyType.Words) key.type()).choices();
    return word(key).map(word -> constants.get(words.indexOf(word)));
  }

  /** A text of the key's form. */
  public Optional<String> form(Key key) {
    KeyType.Form type = (KeyType.Form) key.type();
    return text(key).flatMap(text -> values.form(text, key.name(), type, key.example()));
  }

  /** A condition. */
  public Optional<Condition> condition(Key key) {
    return text(key).flatMap(values::condition);
  }

  /** Reports an absent key. */
  public void lacks(String key, String example) {
    if (!has(key)) {
      String what = "lacks the key '" + key + "'; for example '" + example + "'";
      problems.add(place, block.called() + " " + what);
    }
  }

  /** Reports every key that must be there and is not. */
  public void lacksRequired() {
    block.keys().stream().filter(Key::required).forEach(this::lacks);
  }

  /** Reports an absent key. */
  public void lacks(Key key) {
    lacks(key.name(), key.written());
  }

  /** Reports what a key needs beside it and is absent. */
  public void lacksNeeds(Key key) {
    key.needs().forEach(name -> lacks(block.find(name).orElseThrow()));
  }

  /** Reports a key that has no business here. */
  public void refuse(String key, String reason) {
    if (has(key)) {
      problems.add(keyPlace(key), "'" + key + "' " + reason);
    }
  }

  /** Reports each of these keys that stands without any of its companions. */
  public void refuseLonely(List<Key> keys) {
    for (Key key : keys) {
      if (!key.companions().isEmpty() && key.companions().stream().noneMatch(this::isMet)) {
        String with = String.join("' or '", key.companions());
        refuse(key.name(), "goes only with '" + with + "'" + key.hint());
      }
    }
  }

  /** Reports each key of the block that stands without any of its companions. */
  public void refuseLonely() {
    refuseLonely(block.keys());
  }

  private boolean isMet(String companion) {
    String[] parts = companion.split(": ", 2);
    return has(parts[0]) && (parts.length == 1 || isWord(parts[0], parts[1]));
  }

  private boolean isWord(String key, String word) {
    return node(key)
        .map(node -> node instanceof YamlNode.Text text && text.value().equals(word))
        .orElse(false);
  }
}
