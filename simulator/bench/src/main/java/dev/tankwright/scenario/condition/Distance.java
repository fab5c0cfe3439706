package dev.tankwright.scenario.condition;

import dev.tankwright.loop.Signal;
import dev.tankwright.loop.SignalSource;
import java.util.EnumSet;
import java.util.Set;

/**
 * How far the numbers of a condition are from changing its answer: positive or 0 where it holds,
 * negative or 0 where it does not, infinite where a switch or a word alone decides. Numbers of one
 * unit are weighed as they are; numbers of several are weighed as shares of their limits, and the
 * distance is told for the comparison that decides, in the unit of that comparison. Allocates
 * nothing once made; not thread-safe.
 */
final class Distance {
  private final Condition condition;
  private final boolean measured;
  private final boolean mixed;
  private String unit = "";

  Distance(Condition condition) {
    this.condition = condition;
    Set<Signal.Quantity> quantities = EnumSet.noneOf(Signal.Quantity.class);
    condition.visit(signal -> quantities.add(signal.quantity()));
    quantities.remove(Signal.Quantity.SWITCH);
    quantities.remove(Signal.Quantity.WORD);
    measured = !quantities.isEmpty();
    mixed = quantities.size() > 1;
    if (measured && !mixed) {
      unit = quantities.iterator().next().marginUnit();
    }
  }

  /** True when a number is compared. */
  boolean isMeasured() {
    return measured;
  }

  /** True when numbers of different units are compared. */
  boolean isMixed() {
    return mixed;
  }

  /** The distance now, to be weighed against other moments of the same condition. */
  double weight(SignalSource source) {
    return mixed ? share(condition, source) : condition.robustness(source);
  }

  /** The distance now in {@link #unit()}, of the comparison that decides. */
  double told(SignalSource source) {
    return mixed ? deciding(condition, source) : condition.robustness(source);
  }

  /** Unit of what was told last. */
  String unit() {
    return unit;
  }

  private static double share(Condition part, SignalSource source) {
    if (part instanceof Condition.Compare compare) {
      double limit = Math.abs(compare.limit());
      return compare.robustness(source) / (limit == 0 ? 1 : limit);
    } else if (part instanceof Condition.Not not) {
      return -share(not.inner(), source);
    } else if (part instanceof Condition.And and) {
      return Math.min(share(and.left(), source), share(and.right(), source));
    } else if (part instanceof Condition.Or or) {
      return Math.max(share(or.left(), source), share(or.right(), source));
    }
    return part.robustness(source);
  }

  private double deciding(Condition part, SignalSource source) {
    if (part instanceof Condition.Compare compare) {
      unit = compare.signal().quantity().marginUnit();
    } else if (part instanceof Condition.Not not) {
      return -deciding(not.inner(), source);
    } else if (part instanceof Condition.And and) {
      boolean left = share(and.left(), source) <= share(and.right(), source);
      return deciding(left ? and.left() : and.right(), source);
    } else if (part instanceof Condition.Or or) {
      boolean left = share(or.left(), source) >= share(or.right(), source);
      return deciding(left ? or.left() : or.right(), source);
    }
    return part.robustness(source);
  }
}
