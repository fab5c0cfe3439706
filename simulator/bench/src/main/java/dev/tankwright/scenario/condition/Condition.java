package dev.tankwright.scenario.condition;

import dev.tankwright.loop.Signal;
import dev.tankwright.loop.SignalSource;
import dev.tankwright.scenario.yaml.Quote;
import dev.tankwright.scenario.yaml.TextFault;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Consumer;

/**
 * A condition over signals, as a tree. Immutable; both evaluations allocate nothing. The text of a
 * condition ({@code toString}) is the condition as a file writes it.
 *
 * <p>Besides true and false a condition has a robustness, as in signal temporal logic (Donzé and
 * Maler, FORMATS 2010; cited from memory): how far the numbers are from changing the answer. It is
 * positive or 0 where the condition holds, negative or 0 where it does not; a switch or a word
 * counts as infinitely far.
 */
public sealed interface Condition {
  /**
   * Reads a condition as a scenario file writes it, for example {@code lid-open and heater}.
   *
   * @throws IllegalArgumentException when it is none; the message says what is wrong, where, and
   *     what would be right
   */
  static Condition of(String text) {
    try {
      return ConditionParser.parse(text);
    } catch (TextFault e) {
      throw new IllegalArgumentException(
          Quote.of(text) + ", character " + (e.offset() + 1) + ": " + e.getMessage(), e);
    }
  }

  /**
   * True when the condition holds now.
   *
   * @throws IllegalStateException when a compared signal is not a number
   */
  boolean holds(SignalSource source);

  /**
   * How far the condition is from changing, in the unit of its comparisons.
   *
   * @throws IllegalStateException when a compared signal is not a number
   */
  double robustness(SignalSource source);

  /** Shows every signal to the visitor, once for each time it is named, from left to right. */
  void visit(Consumer<Signal> visitor);

  /**
   * Unit of the robustness; empty when the condition compares no number, or numbers of different
   * units, whose distances cannot be weighed against each other.
   */
  default Optional<String> measure() {
    Set<Signal.Quantity> quantities = new TreeSet<>();
    visit(signal -> quantities.add(signal.quantity()));
    quantities.remove(Signal.Quantity.SWITCH);
    quantities.remove(Signal.Quantity.WORD);
    return quantities.size() == 1
        ? Optional.of(quantities.iterator().next().marginUnit())
        : Optional.empty();
  }

  /** How numbers are compared. */
  enum Order {
    /** Less. */
    LESS("<"),
    /** Less or equal. */
    LESS_OR_EQUAL("<="),
    /** Greater. */
    GREATER(">"),
    /** Greater or equal. */
    GREATER_OR_EQUAL(">=");

    private final String sign;

    Order(String sign) {
      this.sign = sign;
    }

    @Override
    public String toString() {
      return sign;
    }
  }

  /**
   * A number compared with a limit.
   *
   * @param signal a signal that is a number
   * @param order how it is compared
   * @param limit the limit in the signal's unit
   * @param limitText the limit as the file gives it
   */
  record Compare(Signal signal, Order order, double limit, String limitText) implements Condition {
    @Override
    public boolean holds(SignalSource source) {
      double value = number(source);
      return switch (order) {
        case LESS -> value < limit;
        case LESS_OR_EQUAL -> value <= limit;
        case GREATER -> value > limit;
        case GREATER_OR_EQUAL -> value >= limit;
      };
    }

    @Override
    public double robustness(SignalSource source) {
      double value = number(source);
      return switch (order) {
        case LESS, LESS_OR_EQUAL -> limit - value;
        case GREATER, GREATER_OR_EQUAL -> value - limit;
      };
    }

    private double number(SignalSource source) {
      double value = source.value(signal);
      if (Double.isNaN(value)) {
        throw new IllegalStateException(signal.key() + " is not a number");
      }
      return value;
    }

    @Override
    public void visit(Consumer<Signal> visitor) {
      visitor.accept(signal);
    }

    @Override
    public String toString() {
      return signal.key() + " " + order + " " + limitText;
    }
  }

  /**
   * A switch that is on.
   *
   * @param signal a signal that is a switch
   */
  record On(Signal signal) implements Condition {
    @Override
    public boolean holds(SignalSource source) {
      return source.value(signal) != 0;
    }

    @Override
    public double robustness(SignalSource source) {
      return holds(source) ? Double.POSITIVE_INFINITY : Double.NEGATIVE_INFINITY;
    }

    @Override
    public void visit(Consumer<Signal> visitor) {
      visitor.accept(signal);
    }

    @Override
    public String toString() {
      return signal.key();
    }
  }

  /**
   * A signal that is a certain word.
   *
   * @param signal a signal that is a word
   * @param position the word's position among the signal's words
   */
  record Is(Signal signal, int position) implements Condition {
    @Override
    public boolean holds(SignalSource source) {
      return source.value(signal) == position;
    }

    @Override
    public double robustness(SignalSource source) {
      return holds(source) ? Double.POSITIVE_INFINITY : Double.NEGATIVE_INFINITY;
    }

    @Override
    public void visit(Consumer<Signal> visitor) {
      visitor.accept(signal);
    }

    @Override
    public String toString() {
      return signal.key() + " = " + signal.words().get(position);
    }
  }

  /**
   * The opposite.
   *
   * @param inner what must not hold
   */
  record Not(Condition inner) implements Condition {
    @Override
    public boolean holds(SignalSource source) {
      return !inner.holds(source);
    }

    @Override
    public double robustness(SignalSource source) {
      return -inner.robustness(source);
    }

    @Override
    public void visit(Consumer<Signal> visitor) {
      inner.visit(visitor);
    }

    @Override
    public String toString() {
      if (inner instanceof Is is) {
        return is.signal().key() + " != " + is.signal().words().get(is.position());
      }
      return "not " + (inner instanceof And || inner instanceof Or ? "(" + inner + ")" : inner);
    }
  }

  /**
   * Both.
   *
   * @param left the one
   * @param right the other
   */
  record And(Condition left, Condition right) implements Condition {
    @Override
    public boolean holds(SignalSource source) {
      return left.holds(source) && right.holds(source);
    }

    @Override
    public double robustness(SignalSource source) {
      return Math.min(left.robustness(source), right.robustness(source));
    }

    @Override
    public void visit(Consumer<Signal> visitor) {
      left.visit(visitor);
      right.visit(visitor);
    }

    @Override
    public String toString() {
      return side(left) + " and " + (right instanceof And ? "(" + right + ")" : side(right));
    }

    private static String side(Condition side) {
      return side instanceof Or ? "(" + side + ")" : side.toString();
    }
  }

  /**
   * At least one.
   *
   * @param left the one
   * @param right the other
   */
  record Or(Condition left, Condition right) implements Condition {
    @Override
    public boolean holds(SignalSource source) {
      return left.holds(source) || right.holds(source);
    }

    @Override
    public double robustness(SignalSource source) {
      return Math.max(left.robustness(source), right.robustness(source));
    }

    @Override
    public void visit(Consumer<Signal> visitor) {
      left.visit(visitor);
      right.visit(visitor);
    }

    @Override
    public String toString() {
      return left + " or " + (right instanceof Or ? "(" + right + ")" : right);
    }
  }
}
