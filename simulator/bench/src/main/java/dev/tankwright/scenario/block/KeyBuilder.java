package dev.tankwright.scenario.block;

import java.util.List;

/** Puts a key together, for tables of keys. One thread. */
public final class KeyBuilder {
  private final String name;
  private final KeyType type;
  private final Origin origin;
  private final String help;
  private String since = Key.FIRST;
  private List<String> former = List.of();
  private boolean required;
  private String example = "";
  private String standard = "";
  private String group = "";
  private List<String> companions = List.of();
  private String hint = "";
  private List<String> needs = List.of();

  private KeyBuilder(String name, KeyType type, Origin origin, String help) {
    this.name = name;
    this.type = type;
    this.origin = origin;
    this.help = help;
  }

  /** Begins a key that may be left out, has no default, and stands alone. */
  public static KeyBuilder key(String name, KeyType type, Origin origin, String help) {
    return new KeyBuilder(name, type, origin, help);
  }

  /** The version that brought it. */
  public KeyBuilder since(String version) {
    since = version;
    return this;
  }

  /** What it was called before. */
  public KeyBuilder formerly(String... names) {
    former = List.of(names);
    return this;
  }

  /** It must be there; a value as an example. */
  public KeyBuilder required(String value) {
    required = true;
    return example(value);
  }

  /** A value as an example, for where something else asks for it. */
  public KeyBuilder example(String value) {
    example = value;
    return this;
  }

  /** Its value where it is absent. */
  public KeyBuilder otherwise(String value) {
    standard = value;
    return this;
  }

  /** A block takes just one key of this group. */
  public KeyBuilder oneOf(String ownGroup) {
    group = ownGroup;
    return this;
  }

  /** At least one of these must stand beside it, {@code key} or {@code key: word}. */
  public KeyBuilder with(String... keys) {
    companions = List.of(keys);
    return this;
  }

  /** What follows on the message about missing companions. */
  public KeyBuilder hint(String text) {
    hint = text;
    return this;
  }

  /** All of these must stand beside it. */
  public KeyBuilder needs(String... keys) {
    needs = List.of(keys);
    return this;
  }

  /** The key. */
  public Key make() {
    return new Key(
        name,
        type,
        origin,
        help,
        since,
        former,
        required,
        example,
        standard,
        group,
        companions,
        hint,
        needs);
  }
}
