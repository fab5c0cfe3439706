package dev.tankwright.scenario.block;

import dev.tankwright.scenario.quantity.Dimension;
import java.math.BigDecimal;
import java.util.List;

/** What the value of a key is. Immutable. */
public sealed interface KeyType {
  /** How many milliseconds a second has, and thousandths a unit. */
  int MILLI = 1000;

  /** What the value must be, as an ending of a sentence; empty where the help says it all. */
  String told();

  /**
   * One line of text.
   *
   * @param longest characters at most
   */
  record Line(int longest) implements KeyType {
    @Override
    public String told() {
      return "one line, at most " + longest + " characters";
    }
  }

  /**
   * A number with its unit.
   *
   * @param dimension what is measured
   * @param least least value, in the dimension's base unit
   * @param most greatest value, likewise, wherever {@code bound} does not say less
   * @param bound what bounds it in the scenario at hand, in words; empty for {@code most}
   * @param perUnit values are whole multiples of {@code 1 / perUnit} of the base unit; 0 for any
   */
  record Quantity(Dimension dimension, String least, String most, String bound, int perUnit)
      implements KeyType {
    @Override
    public String told() {
      String top = bound.isEmpty() ? dimension.shown(new BigDecimal(most)) : bound;
      return dimension.shown(new BigDecimal(least)) + " to " + top;
    }

    /** The same, bounded by something in the scenario at hand. */
    public Quantity upTo(String words) {
      return new Quantity(dimension, least, most, words, perUnit);
    }
  }

  /**
   * A whole number.
   *
   * @param least least value
   * @param most greatest value
   */
  record Whole(long least, long most) implements KeyType {
    @Override
    public String told() {
      return least + " to " + most;
    }
  }

  /**
   * One of some words.
   *
   * @param choices the words
   * @param called what they are called where they are listed elsewhere; empty to list them
   */
  record Words(List<String> choices, String called) implements KeyType {
    /** Keeps its own copy of the list. */
    public Words {
      choices = List.copyOf(choices);
    }

    @Override
    public String told() {
      return called.isEmpty() ? "`" + String.join("`, `", choices) + "`" : called;
    }
  }

  /**
   * A text of a certain form.
   *
   * @param form a regular expression for all of it
   * @param told the form in words
   */
  record Form(String form, String told) implements KeyType {}

  /** A condition over signals. */
  record ConditionText() implements KeyType {
    @Override
    public String told() {
      return "a condition";
    }
  }

  /**
   * Something that only its own reader knows: keys, a list, a file, a moment of the calendar.
   *
   * @param told the value in words; may be empty
   */
  record Special(String told) implements KeyType {}

  /** A quantity of any value in its range. */
  static Quantity quantity(Dimension dimension, String least, String most) {
    return new Quantity(dimension, least, most, "", 0);
  }

  /** A quantity of any value in its range, given as {@code least to most}. */
  static Quantity quantity(Dimension dimension, String range) {
    String[] ends = range.split(" to ", 2);
    return quantity(dimension, ends[0], ends[1]);
  }

  /** A quantity in whole thousandths of its base unit. */
  static Quantity milli(Dimension dimension, String least, String most) {
    return new Quantity(dimension, least, most, "", MILLI);
  }

  /** A time in whole milliseconds. */
  static Quantity time(long leastMillis, long mostMillis) {
    return milli(Dimension.TIME, seconds(leastMillis), seconds(mostMillis));
  }

  /** Milliseconds as seconds in digits. */
  static String seconds(long millis) {
    return BigDecimal.valueOf(millis, 3).toPlainString();
  }

  /** Some words that are listed where the key is explained. */
  static Words words(List<String> words) {
    return new Words(words, "");
  }
}
