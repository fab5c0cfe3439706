package dev.tankwright.scenario.condition;

import dev.tankwright.loop.Signal;
import dev.tankwright.loop.SignalSource;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/**
 * How far a condition that must always hold is from failing in time: by how much any of its signals
 * could have come later. Each comparison counts for as long as it has been what it is, positive
 * while true and negative while false; {@code and} takes the lesser, {@code or} the greater. That
 * is the left time robustness of Donzé and Maler (FORMATS 2010; cited from memory). What has not
 * changed since the run began counts as infinitely far. For conditions of switches and words alone.
 * Allocates nothing once made; not thread-safe.
 */
public final class TimeDistance {
  private final Condition condition;
  private final Signal[] signals;
  private final double[] values;
  private final Condition[] leaves;
  private final boolean[] truth;
  private final boolean[] changed;
  private final long[] since;
  private boolean begun;
  private boolean holds;
  private long start;
  private int cursor;
  private double least = Double.POSITIVE_INFINITY;
  private long leastAt;

  public TimeDistance(Condition condition) {
    this.condition = condition;
    List<Condition> found = new ArrayList<>();
    collect(condition, found);
    leaves = found.toArray(Condition[]::new);
    truth = new boolean[leaves.length];
    changed = new boolean[leaves.length];
    since = new long[leaves.length];
    Set<Signal> named = EnumSet.noneOf(Signal.class);
    condition.visit(named::add);
    signals = named.toArray(Signal[]::new);
    values = new double[signals.length];
    // Unlike every value, so that the first step is a change.
    Arrays.fill(values, Double.NaN);
  }

  private static void collect(Condition part, List<Condition> leaves) {
    if (part instanceof Condition.Not not) {
      collect(not.inner(), leaves);
    } else if (part instanceof Condition.And and) {
      collect(and.left(), leaves);
      collect(and.right(), leaves);
    } else if (part instanceof Condition.Or or) {
      collect(or.left(), leaves);
      collect(or.right(), leaves);
    } else {
      leaves.add(part);
    }
  }

  /** Looks at one step, and says whether the condition holds in it. */
  public boolean step(long millis, SignalSource source) {
    for (int i = 0; i < signals.length; i++) {
      // Compared as values: most steps are done with one reading for each signal.
      if (source.value(signals[i]) != values[i]) {
        return change(millis, source);
      }
    }
    return holds;
  }

  private boolean change(long millis, SignalSource source) {
    if (begun) {
      judge(millis);
    }
    for (int i = 0; i < signals.length; i++) {
      values[i] = source.value(signals[i]);
    }
    for (int i = 0; i < leaves.length; i++) {
      boolean now = leaves[i].holds(source);
      if (now != truth[i]) {
        changed[i] = begun;
        since[i] = millis;
        truth[i] = now;
      }
    }
    settle(millis, source);
    return holds;
  }

  /** The distance is least just before a change, where it is negative, and just after one. */
  private void settle(long millis, SignalSource source) {
    holds = condition.holds(source);
    if (begun) {
      judge(millis);
    } else {
      begun = true;
      start = millis;
    }
  }

  private void judge(long millis) {
    double now = at(millis);
    if (now < least) {
      least = now;
      leastAt = millis;
    }
  }

  private double at(long millis) {
    cursor = 0;
    double value = of(condition, millis);
    return value == Double.NEGATIVE_INFINITY ? start - millis : value;
  }

  private double of(Condition part, long millis) {
    if (part instanceof Condition.Not not) {
      return -of(not.inner(), millis);
    } else if (part instanceof Condition.And and) {
      double left = of(and.left(), millis);
      return Math.min(left, of(and.right(), millis));
    } else if (part instanceof Condition.Or or) {
      double left = of(or.left(), millis);
      return Math.max(left, of(or.right(), millis));
    }
    int i = cursor++;
    double age = changed[i] ? millis - since[i] : Double.POSITIVE_INFINITY;
    return truth[i] ? age : -age;
  }

  /** The least distance up to the run's end, ms; infinite when nothing came near. */
  public double leastMillis(long endMillis) {
    return begun && !holds ? Math.min(least, at(endMillis)) : least;
  }

  /** When it was least, ms since the start of the run. */
  public long leastAt() {
    return leastAt;
  }
}
