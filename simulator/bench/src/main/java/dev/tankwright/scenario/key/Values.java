package dev.tankwright.scenario.key;

import dev.tankwright.scenario.condition.Condition;
import dev.tankwright.scenario.condition.ConditionParser;
import dev.tankwright.scenario.quantity.Amount;
import dev.tankwright.scenario.quantity.AmountParser;
import dev.tankwright.scenario.quantity.Dimension;
import dev.tankwright.scenario.quantity.Plain;
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
  /** How many milliseconds a second has, and thousandths a unit. */
  public static final int MILLI = 1000;

  private final Problems problems;

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
              + bound(low, dimension)
              + " to "
              + bound(high, dimension));
    } catch (TextFault e) {
      problems.add(text.at(e.offset()), e.getMessage());
    }
    return Optional.empty();
  }

  /** A bound of a range in words. */
  public static String bound(BigDecimal value, Dimension dimension) {
    return switch (dimension) {
      case TIME -> Plain.duration(value.movePointRight(3).longValue());
      case FRACTION -> Amount.withUnit(value.movePointRight(2), Dimension.NUMBER) + " %";
      default -> Amount.withUnit(value, dimension);
    };
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

  /** A time from least to most, in ms. */
  public OptionalLong millis(
      YamlNode.Text text, String subject, long leastMillis, long mostMillis) {
    String least = BigDecimal.valueOf(leastMillis, 3).toPlainString();
    String most = BigDecimal.valueOf(mostMillis, 3).toPlainString();
    Optional<Amount> amount = amount(text, subject, Dimension.TIME, least, most);
    return amount.isPresent() ? whole(text, subject, amount.get(), MILLI) : OptionalLong.empty();
  }

  /** A temperature from least to most, in m°C. */
  public Optional<Integer> milliC(YamlNode.Text text, String subject, String least, String most) {
    return amount(text, subject, Dimension.TEMPERATURE, least, most)
        .map(amount -> whole(text, subject, amount, MILLI))
        .filter(whole -> whole.isPresent())
        .map(whole -> Math.toIntExact(whole.getAsLong()));
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
