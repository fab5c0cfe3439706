package dev.tankwright.scenario.block;

import dev.tankwright.scenario.condition.Condition;
import dev.tankwright.scenario.condition.ConditionParser;
import dev.tankwright.scenario.quantity.Amount;
import dev.tankwright.scenario.quantity.AmountParser;
import dev.tankwright.scenario.quantity.Dimension;
import dev.tankwright.scenario.yaml.Nearest;
import dev.tankwright.scenario.yaml.Problems;
import dev.tankwright.scenario.yaml.Quote;
import dev.tankwright.scenario.yaml.TextFault;
import dev.tankwright.scenario.yaml.YamlNode;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;

/** Turns single values of a file into typed ones; what cannot be turned is reported and empty. */
public final class Values {
  private static final String FROM_NOTHING = "[0-9]{1,16}";
  private static final String FROM_ONE = "[1-9][0-9]{0,15}";

  private final Problems problems;

  /**
   * Makes one.
   *
   * @param problems takes what is wrong
   */
  public Values(Problems problems) {
    this.problems = problems;
  }

  /** One line of text; line breaks and runs of spaces become one space. */
  public Optional<String> line(YamlNode.Text text, String subject, int longest) {
    String line = text.value().strip().replaceAll("\\s+", " ");
    if (line.codePointCount(0, line.length()) > longest) {
      problems.add(
          text.place(), subject + " is longer than " + longest + " characters; shorten it");
      return Optional.empty();
    }
    return Optional.of(line);
  }

  /** A quantity from least to most, in the dimension's base unit. */
  public Optional<Amount> amount(
      YamlNode.Text text, String subject, Dimension dimension, String least, String most) {
    try {
      Amount amount = AmountParser.parse(text.value(), dimension, subject);
      BigDecimal low = new BigDecimal(least);
      BigDecimal high = new BigDecimal(most);
      if (amount.compareTo(low) >= 0 && amount.compareTo(high) <= 0) {
        return Optional.of(amount);
      }
      problems.add(
          text.place(),
          subject
              + " is "
              + amount.text()
              + "; it must lie from "
              + dimension.shown(low)
              + " to "
              + dimension.shown(high));
    } catch (TextFault e) {
      problems.add(text.at(e.offset()), e.getMessage());
    }
    return Optional.empty();
  }

  /** The default of a key that is a quantity. */
  Amount standard(Key key) {
    try {
      KeyType.Quantity type = (KeyType.Quantity) key.type();
      return AmountParser.parse(key.standard(), type.dimension(), key.name());
    } catch (TextFault e) {
      throw new IllegalStateException("the default of '" + key.name() + "' is no quantity", e);
    }
  }

  /** A quantity as a whole number of {@code 1 / perUnit} of the base unit. */
  public OptionalLong whole(YamlNode.Text text, String subject, Amount amount, int perUnit) {
    OptionalLong whole = amount.whole(perUnit);
    if (whole.isEmpty()) {
      BigDecimal step = BigDecimal.ONE.divide(BigDecimal.valueOf(perUnit));
      problems.add(
          text.place(),
          subject
              + " is "
              + amount.text()
              + ", which is not a whole multiple of "
              + Amount.withUnit(step, amount.dimension())
              + "; the nearest is "
              + amount.nearest(perUnit));
    }
    return whole;
  }

  /** A whole number from least to most. */
  public OptionalLong whole(YamlNode.Text text, String subject, long least, long most) {
    boolean digits = text.value().matches(least < 1 ? FROM_NOTHING : FROM_ONE);
    long number = digits ? Long.parseLong(text.value()) : -1;
    if (digits && number >= least && number <= most) {
      return OptionalLong.of(number);
    }
    String must = "; it must be a whole number from " + least + " to " + most;
    problems.add(text.place(), subject + " is " + Quote.of(text.value()) + must);
    return OptionalLong.empty();
  }

  /** A text of a form. */
  Optional<String> form(YamlNode.Text text, String subject, KeyType.Form type, String example) {
    if (text.value().matches(type.form())) {
      return Optional.of(text.value());
    }
    String must = "; it must be " + type.told() + ", for example " + example;
    problems.add(text.place(), subject + " is " + Quote.of(text.value()) + must);
    return Optional.empty();
  }

  /** One of some words. */
  public Optional<String> word(YamlNode.Text text, String subject, List<String> words) {
    if (words.contains(text.value())) {
      return Optional.of(text.value());
    }
    problems.add(
        text.place(),
        subject
            + " cannot be "
            + Quote.of(text.value())
            + "; "
            + Nearest.hint(text.value(), words));
    return Optional.empty();
  }

  /** One of the constants of an enum by its name. */
  public <E extends Enum<E>> Optional<E> constant(
      YamlNode.Text text, String subject, List<E> allowed) {
    List<String> names = allowed.stream().map(Enum::name).toList();
    return word(text, subject, names).map(name -> allowed.get(names.indexOf(name)));
  }

  /** A condition over signals. */
  public Optional<Condition> condition(YamlNode.Text text) {
    try {
      return Optional.of(ConditionParser.parse(text.value()));
    } catch (TextFault e) {
      problems.add(text.at(e.offset()), e.getMessage());
      return Optional.empty();
    }
  }
}
