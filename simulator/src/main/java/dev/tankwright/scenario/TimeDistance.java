package dev.tankwright.scenario;

import dev.tankwright.loop.SignalSource;
import java.util.ArrayList;
import java.util.List;

/**
 * How far a condition that must always hold is from failing in time: by how much any of its signals
 * could have come later. Each comparison counts for as long as it has been what it is, positive
 * while true and negative while false; {@code and} takes the lesser, {@code or} the greater. That
 * is the left time robustness of Donzé and Maler (FORMATS 2010; cited from memory). What has not
 * changed since the run began counts as infinitely far. Allocates nothing once made; not
 * thread-safe.
 */
final class TimeDistance {
  private final Condition condition;
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

  TimeDistance(Condition condition) {
    this.condition = condition;
    List<Condition> found = new ArrayList<>();
    collect(condition, found);
    leaves = found.toArray(Condition[]::new);
    truth = new boolean[leaves.length];
    changed = new boolean[leaves.length];
    since = new long[leaves.length];
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
  boolean step(long millis, SignalSource source) {
    boolean news = !begun;
    for (int i = 0; i < leaves.length; i++) {
      boolean now = leaves[i].holds(source);
      if (now != truth[i]) {
        if (begun && !news) {
          judge(millis);
        }
        news = true;
        changed[i] = begun;
        since[i] = millis;
        truth[i] = now;
      }
    }
    if (news) {
      settle(millis, source);
    }
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
  double leastMillis(long endMillis) {
    return begun && !holds ? Math.min(least, at(endMillis)) : least;
  }

  /** When it was least, ms since the start of the run. */
  long leastAt() {
    return leastAt;
  }
}
