package dev.tankwright.scenario.condition;

import dev.tankwright.loop.Signal;
import dev.tankwright.scenario.quantity.Amount;
import dev.tankwright.scenario.quantity.AmountParser;
import dev.tankwright.scenario.quantity.Dimension;
import dev.tankwright.scenario.yaml.Nearest;
import dev.tankwright.scenario.yaml.Quote;
import dev.tankwright.scenario.yaml.TextFault;
import java.util.Map;
import java.util.Set;

/**
 * Reads what follows on a signal's name, by the kind of the signal.
 *
 * @param signal the signal
 * @param name the token that names it
 * @param sign the token after that
 * @param value the token after the sign
 */
record ComparisonReader(
    Signal signal,
    ConditionLexer.Token name,
    ConditionLexer.Token sign,
    ConditionLexer.Token value) {

  private static final Map<String, Condition.Order> ORDERS =
      Map.of(
          "<", Condition.Order.LESS,
          "<=", Condition.Order.LESS_OR_EQUAL,
          ">", Condition.Order.GREATER,
          ">=", Condition.Order.GREATER_OR_EQUAL);
  private static final Set<String> EQUALITIES = Set.of("=", "!=");

  /**
   * Reads on.
   *
   * @param taken run when the sign and the value belong to the comparison
   */
  Condition read(Runnable taken) throws TextFault {
    boolean compared = ORDERS.containsKey(sign.text()) || EQUALITIES.contains(sign.text());
    if (compared && value.kind() == ConditionLexer.Kind.END) {
      throw new TextFault(
          sign.offset(), "nothing follows on '" + sign.text() + "'; " + ConditionParser.FORM);
    }
    Condition condition =
        switch (signal.quantity()) {
          case SWITCH -> onOrOff(compared);
          case WORD -> word(compared);
          default -> number(compared);
        };
    if (compared) {
      taken.run();
    }
    return condition;
  }

  private Condition onOrOff(boolean compared) throws TextFault {
    String key = signal.key();
    if (compared) {
      throw new TextFault(
          sign.offset(),
          key + " is a switch and is not compared; write '" + key + "' or 'not " + key + "'");
    }
    return new Condition.On(signal);
  }

  private Condition word(boolean compared) throws TextFault {
    String example = signal.key() + " = " + signal.words().get(signal.words().size() - 1);
    if (!compared) {
      throw new TextFault(
          name.offset(),
          signal.key() + " is one of several words; write, for example, '" + example + "'");
    }
    if (!EQUALITIES.contains(sign.text())) {
      throw new TextFault(
          sign.offset(),
          signal.key()
              + " is a word and has no order; compare it with = or !=, as in '"
              + example
              + "'");
    }
    int position =
        value.kind() == ConditionLexer.Kind.WORD ? signal.words().indexOf(value.text()) : -1;
    if (position < 0) {
      throw new TextFault(
          value.offset(),
          signal.key()
              + " cannot be "
              + Quote.of(value.text())
              + "; "
              + Nearest.hint(value.text(), signal.words()));
    }
    Condition is = new Condition.Is(signal, position);
    return sign.is("=") ? is : new Condition.Not(is);
  }

  private Condition number(boolean compared) throws TextFault {
    Dimension dimension = Dimension.of(signal.quantity());
    if (!compared) {
      throw new TextFault(
          name.offset(),
          signal.key()
              + " is "
              + dimension.noun()
              + dimension.choices()
              + "; compare it with <, <=, > or >=");
    }
    if (EQUALITIES.contains(sign.text())) {
      throw new TextFault(
          sign.offset(),
          signal.key()
              + " is "
              + dimension.noun()
              + " and is never exactly one value; compare it with <, <=, > or >=");
    }
    try {
      Amount limit = AmountParser.parse(value.text(), dimension, signal.key());
      return new Condition.Compare(signal, ORDERS.get(sign.text()), limit.value(), limit.text());
    } catch (TextFault e) {
      throw new TextFault(value.offset() + e.offset(), e.getMessage());
    }
  }
}
