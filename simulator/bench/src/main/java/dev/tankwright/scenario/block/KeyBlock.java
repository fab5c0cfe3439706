package dev.tankwright.scenario.block;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The keys that a block may have, in the order in which they are told. Immutable. */
public final class KeyBlock {
  private final String called;
  private final List<Key> keys;
  private final List<String> names;
  private final Map<String, Key> byName = new LinkedHashMap<>();
  private final Map<String, Key> byFormer = new LinkedHashMap<>();

  /**
   * Makes a block.
   *
   * @param called what messages call it, for example {@code this timeline entry}
   */
  public KeyBlock(String called, List<Key> keys) {
    this.called = called;
    this.keys = List.copyOf(keys);
    names = keys.stream().map(Key::name).toList();
    for (Key key : keys) {
      byName.put(key.name(), key);
      key.former().forEach(old -> byFormer.put(old, key));
    }
  }

  /** A block of which nothing is known but its keys' names. */
  public static KeyBlock plain(String called, List<String> names) {
    return new KeyBlock(called, names.stream().map(Key::plain).toList());
  }

  /** What messages call it. */
  public String called() {
    return called;
  }

  /** Its keys. */
  public List<Key> keys() {
    return keys;
  }

  /** Their names. */
  public List<String> names() {
    return names;
  }

  /** The key of that name, if there is one. */
  public Optional<Key> find(String name) {
    return Optional.ofNullable(byName.get(name));
  }

  /** The key that had that name before. */
  Optional<Key> formerly(String name) {
    return Optional.ofNullable(byFormer.get(name));
  }

  /** The name that a key has now; a name that no key had is as it is. */
  public String nameNow(String name) {
    return formerly(name).map(Key::name).orElse(name);
  }

  /** Names of the keys of a group, of which a block takes just one. */
  public List<String> group(String group) {
    return keys.stream().filter(key -> key.group().equals(group)).map(Key::name).toList();
  }

  /** The same keys in a block that messages call something else. */
  public KeyBlock called(String otherwise) {
    return new KeyBlock(otherwise, keys);
  }
}
