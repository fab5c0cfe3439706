package dev.tankwright.scenario.condition;

import dev.tankwright.loop.Signal;
import dev.tankwright.scenario.yaml.Nearest;
import dev.tankwright.scenario.yaml.Quote;
import dev.tankwright.scenario.yaml.TextFault;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Reads conditions by recursive descent: {@code or} binds weakest, then {@code and}, then {@code
 * not}.
 */
public final class ConditionParser {
  /** What a condition looks like, for messages. */
  static final String FORM =
      "a condition is like 'liquid-temperature < 70 °C', 'not heater' or 'phase = CLEANING'";

  private static final int LONGEST = 1000;
  private static final int MOST_SIGNALS = 40;
  private static final int DEEPEST = 20;
  private static final Map<String, String> HABITS =
      Map.ofEntries(
          Map.entry("==", "="),
          Map.entry("<>", "!="),
          Map.entry("=<", "<="),
          Map.entry("=>", ">="),
          Map.entry("&&", "and"),
          Map.entry("&", "and"),
          Map.entry("||", "or"),
          Map.entry("|", "or"),
          Map.entry("!", "not"),
          Map.entry("AND", "and"),
          Map.entry("OR", "or"),
          Map.entry("NOT", "not"));

  private final List<ConditionLexer.Token> tokens;
  private int next;
  private int signals;
  private int depth;

  private ConditionParser(List<ConditionLexer.Token> tokens) {
    this.tokens = tokens;
  }

  /** Reads a whole condition. */
  public static Condition parse(String text) throws TextFault {
    if (text.length() > LONGEST) {
      throw new TextFault(
          0, "this condition is longer than " + LONGEST + " characters; make it several");
    }
    ConditionParser parser = new ConditionParser(ConditionLexer.tokens(text));
    Condition condition = parser.disjunction();
    ConditionLexer.Token rest = parser.peek();
    if (rest.kind() != ConditionLexer.Kind.END) {
      parser.refuseHabit(rest);
      String what =
          rest.is(")")
              ? "this parenthesis closes none"
              : Quote.of(rest.text()) + " does not follow on what stands before";
      throw new TextFault(rest.offset(), what + "; join conditions with 'and' or 'or'");
    }
    return condition;
  }

  private Condition disjunction() throws TextFault {
    Condition left = conjunction();
    while (peek().is("or")) {
      next++;
      left = new Condition.Or(left, conjunction());
    }
    return left;
  }

  private Condition conjunction() throws TextFault {
    Condition left = negation();
    while (peek().is("and")) {
      next++;
      left = new Condition.And(left, negation());
    }
    return left;
  }

  private Condition negation() throws TextFault {
    ConditionLexer.Token token = peek();
    refuseHabit(token);
    if (!token.is("not") && !token.is("(")) {
      return comparison();
    }
    if (++depth > DEEPEST) {
      throw new TextFault(token.offset(), "nested deeper than " + DEEPEST + " levels; simplify it");
    }
    next++;
    Condition inner = token.is("not") ? new Condition.Not(negation()) : parenthesised(token);
    depth--;
    return inner;
  }

  private Condition parenthesised(ConditionLexer.Token open) throws TextFault {
    Condition inner = disjunction();
    ConditionLexer.Token close = peek();
    refuseHabit(close);
    if (!close.is(")")) {
      throw new TextFault(open.offset(), "this parenthesis is not closed; add ')'");
    }
    next++;
    return inner;
  }

  private Condition comparison() throws TextFault {
    ConditionLexer.Token name = peek();
    if (name.kind() != ConditionLexer.Kind.WORD || name.is("and") || name.is("or")) {
      String found = name.kind() == ConditionLexer.Kind.END ? "the end" : Quote.of(name.text());
      throw new TextFault(name.offset(), "a signal is wanted here, not " + found + "; " + FORM);
    }
    next++;
    if (++signals > MOST_SIGNALS) {
      throw new TextFault(name.offset(), "more than " + MOST_SIGNALS + " signals; make it several");
    }
    Optional<Signal> signal = Signal.byKey(name.text());
    if (signal.isEmpty()) {
      throw new TextFault(name.offset(), unknown(name.text()));
    }
    refuseHabit(peek());
    return new ComparisonReader(signal.get(), name, peek(), tokenAfterSign()).read(this::advance);
  }

  private static String unknown(String name) {
    for (Signal signal : Signal.all()) {
      if (signal.words().contains(name) && !name.equals("NONE")) {
        return "'"
            + name
            + "' is a word of "
            + signal.key()
            + "; write '"
            + signal.key()
            + " = "
            + name
            + "'";
      }
    }
    List<String> keys = Signal.all().stream().map(Signal::key).toList();
    return "unknown signal " + Quote.of(name) + "; " + Nearest.hint(name, keys);
  }

  private void advance() {
    next += 2;
  }

  private ConditionLexer.Token peek() {
    return tokens.get(next);
  }

  private ConditionLexer.Token tokenAfterSign() {
    return tokens.get(Math.min(next + 1, tokens.size() - 1));
  }

  /** Other languages' spellings get the right one as an answer. */
  private void refuseHabit(ConditionLexer.Token token) throws TextFault {
    String right = HABITS.get(token.text());
    if (right != null) {
      throw new TextFault(token.offset(), "write '" + right + "' for '" + token.text() + "'");
    }
  }
}
