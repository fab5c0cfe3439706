package dev.tankwright.scenario.yaml;

import java.util.List;

/** A piece of a YAML document that knows where it stands. */
public sealed interface YamlNode {
  Place place();

  /** What the node is, for messages. */
  String noun();

  /**
   * A single value.
   *
   * @param value the text, quotes and escapes resolved
   * @param place where it begins, quotes included
   * @param inset columns from the place to the text, or -1 when the text does not stand in one line
   *     of the file exactly as in {@code value}
   * @param plain true when it is not quoted
   */
  record Text(String value, Place place, int inset, boolean plain) implements YamlNode {
    /** Place of a character of the value; the value's own place when that is not known. */
    public Place at(int offset) {
      return inset < 0 ? place : place.plus(inset + value.codePointCount(0, offset));
    }

    /** True when nothing stands where a value could. */
    public boolean isNothing() {
      return plain && (value.isEmpty() || value.equals("~") || value.equals("null"));
    }

    @Override
    public String noun() {
      return isNothing() ? "nothing" : "a single value";
    }
  }

  /**
   * A list.
   *
   * @param items its items
   * @param place where it begins
   */
  record Items(List<YamlNode> items, Place place) implements YamlNode {
    @Override
    public String noun() {
      return "a list";
    }
  }

  /**
   * Keys and values, in the order of the file; a key may be there twice.
   *
   * @param pairs its pairs
   * @param place where it begins
   */
  record Keys(List<Pair> pairs, Place place) implements YamlNode {
    @Override
    public String noun() {
      return "keys with values";
    }
  }

  /**
   * A key and its value.
   *
   * @param key the key
   * @param value the value
   */
  record Pair(Text key, YamlNode value) {}
}
