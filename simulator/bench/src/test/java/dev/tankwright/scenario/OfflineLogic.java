package dev.tankwright.scenario;

import dev.tankwright.loop.Signal;
import dev.tankwright.scenario.condition.Condition;
import dev.tankwright.scenario.condition.Signals;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/**
 * A second, naive reading of requirements that looks at a whole recorded run at once and remembers
 * nothing between moments. Space robustness as in Fainekos and Pappas (Theoretical Computer Science
 * 410, 2009), left time robustness as in Donzé and Maler (FORMATS 2010); both cited from memory.
 */
final class OfflineLogic {
  private static final double INF = Double.POSITIVE_INFINITY;
  private static final long STEP = RandomLogic.STEP;

  private final List<Signals> run;
  private final long end;

  OfflineLogic(List<Signals> run) {
    this.run = run;
    end = run.size() * STEP;
  }

  /**
   * An answer.
   *
   * @param margin infinite for none
   * @param unit of the margin
   */
  record Answer(Verdict.Outcome outcome, double margin, String unit) {}

  /** A distance: how it is weighed, and how it is told. */
  private record Rho(double weight, double told, String unit) {
    static final Rho NONE = new Rho(INF, INF, "");

    Rho negated() {
      return new Rho(-weight, -told, unit);
    }

    boolean isFinite() {
      return Double.isFinite(weight);
    }
  }

  Answer answer(Requirement requirement) {
    if (requirement instanceof Requirement.Always a) {
      return always(a.condition(), a.during());
    } else if (requirement instanceof Requirement.Never n) {
      return always(new Condition.Not(n.condition()), n.during());
    } else if (requirement instanceof Requirement.Eventually e) {
      return eventually(e);
    } else if (requirement instanceof Requirement.Within w) {
      return within(w);
    } else if (requirement instanceof Requirement.Stays s) {
      return stays(s);
    } else if (requirement instanceof Requirement.Until u) {
      return until(u);
    }
    return count((Requirement.Count) requirement);
  }

  private static Answer judged(boolean held, double margin, String unit) {
    return new Answer(held ? Verdict.Outcome.HELD : Verdict.Outcome.FAILED, margin, unit);
  }

  private static Answer notExercised() {
    return new Answer(Verdict.Outcome.NOT_EXERCISED, INF, "");
  }

  private boolean is(Condition c, int i) {
    return c.holds(run.get(i));
  }

  private int firstFrom(int from, Condition c) {
    int i = from;
    while (i < run.size() && !is(c, i)) {
      i++;
    }
    return i;
  }

  private List<Integer> edges(Condition c) {
    List<Integer> edges = new ArrayList<>();
    for (int i = 0; i < run.size(); i++) {
      if (is(c, i) && (i == 0 || !is(c, i - 1))) {
        edges.add(i);
      }
    }
    return edges;
  }

  private static Set<Signal.Quantity> numbers(Condition c) {
    Set<Signal.Quantity> found = EnumSet.noneOf(Signal.Quantity.class);
    c.visit(signal -> found.add(signal.quantity()));
    found.removeAll(EnumSet.of(Signal.Quantity.SWITCH, Signal.Quantity.WORD));
    return found;
  }

  private Rho rho(Condition c, int i) {
    return rho(c, run.get(i), numbers(c).size() > 1);
  }

  private static Rho rho(Condition c, Signals now, boolean mixed) {
    if (c instanceof Condition.Compare compare) {
      boolean below = compare.order().toString().startsWith("<");
      double sign = below ? 1 : -1;
      double told = sign * (compare.limit() - now.value(compare.signal()));
      double scale = mixed && compare.limit() != 0 ? Math.abs(compare.limit()) : 1;
      return new Rho(told / scale, told, compare.signal().quantity().marginUnit());
    } else if (c instanceof Condition.Not not) {
      return rho(not.inner(), now, mixed).negated();
    } else if (c instanceof Condition.And and) {
      Rho left = rho(and.left(), now, mixed);
      Rho right = rho(and.right(), now, mixed);
      return left.weight <= right.weight ? left : right;
    } else if (c instanceof Condition.Or or) {
      Rho left = rho(or.left(), now, mixed);
      Rho right = rho(or.right(), now, mixed);
      return left.weight >= right.weight ? left : right;
    }
    return c.holds(now) ? Rho.NONE : Rho.NONE.negated();
  }

  /** The least over some steps; none where there is no number. */
  private Rho least(Condition c, List<Integer> steps) {
    Rho least = Rho.NONE;
    if (!numbers(c).isEmpty()) {
      for (int i : steps) {
        Rho now = rho(c, i);
        least = now.weight < least.weight ? now : least;
      }
    }
    return least;
  }

  /** Left time robustness of the truth in a step, seen from a moment up to the next step. */
  private double theta(Condition c, int i, long moment) {
    if (c instanceof Condition.Not not) {
      return -theta(not.inner(), i, moment);
    } else if (c instanceof Condition.And and) {
      return Math.min(theta(and.left(), i, moment), theta(and.right(), i, moment));
    } else if (c instanceof Condition.Or or) {
      return Math.max(theta(or.left(), i, moment), theta(or.right(), i, moment));
    }
    int since = i;
    while (since > 0 && is(c, since - 1) == is(c, i)) {
      since--;
    }
    double age = since == 0 ? INF : moment - since * STEP;
    return is(c, i) ? age : -age;
  }

  private double leastTheta(Condition c) {
    double least = INF;
    for (int i = 0; i < run.size(); i++) {
      for (long moment = i * STEP; moment <= (i + 1) * STEP; moment += STEP) {
        double now = theta(c, i, moment);
        least = Math.min(least, now == -INF ? -moment : now);
      }
    }
    return least;
  }

  private double longestBreach(Condition c) {
    double longest = 0;
    for (int i = 0; i < run.size(); i++) {
      if (!is(c, i)) {
        longest = Math.max(longest, (double) ((firstFrom(i, c) - i) * STEP));
      }
    }
    return longest == 0 ? INF : -longest;
  }

  private Answer always(Condition c, Optional<Condition> during) {
    List<Integer> scope = new ArrayList<>();
    for (int i = 0; i < run.size(); i++) {
      if (during.isEmpty() || is(during.get(), i)) {
        scope.add(i);
      }
    }
    if (scope.isEmpty()) {
      return notExercised();
    }
    boolean held = scope.stream().allMatch(i -> is(c, i));
    Rho least = least(c, scope);
    if (least.isFinite()) {
      return judged(held, least.told, least.unit);
    }
    Condition implied = during.isEmpty() ? c : new Condition.Or(new Condition.Not(during.get()), c);
    double time = numbers(c).isEmpty() ? leastTheta(implied) : longestBreach(implied);
    return judged(held, time / 1000, Double.isFinite(time) ? "s" : "");
  }

  private Answer eventually(Requirement.Eventually requirement) {
    Condition c = requirement.condition();
    int first = firstFrom(0, c);
    boolean found = first < run.size();
    long limit = requirement.beforeMillis().orElse(end);
    Rho most = least(new Condition.Not(c), all()).negated();
    if (requirement.beforeMillis().isEmpty() && most.isFinite()) {
      return judged(found, most.told, most.unit);
    }
    double left = found ? limit - first * STEP : Math.min(0, limit - end);
    return judged(found && left >= 0, left / 1000, "s");
  }

  private List<Integer> all() {
    List<Integer> all = new ArrayList<>();
    for (int i = 0; i < run.size(); i++) {
      all.add(i);
    }
    return all;
  }

  private Answer within(Requirement.Within requirement) {
    double least = INF;
    boolean anyFailed = false;
    for (int edge : edges(requirement.after())) {
      int reaction = firstFrom(edge, requirement.holds());
      boolean reacted = reaction < run.size();
      long took = (reacted ? reaction - edge : run.size() - 1 - edge) * STEP;
      if (reacted || took >= requirement.limitMillis()) {
        least = Math.min(least, (double) (requirement.limitMillis() - took));
        anyFailed |= !reacted || took > requirement.limitMillis();
      }
    }
    return least == INF ? notExercised() : judged(!anyFailed, least, "ms");
  }

  private Answer stays(Requirement.Stays requirement) {
    Condition c = requirement.condition();
    long time = requirement.forMillis();
    boolean failed = false;
    boolean complete = false;
    double ended = INF;
    double lasting = -INF;
    List<Integer> windows = new ArrayList<>();
    for (int edge : edges(requirement.after().orElse(c))) {
      for (int i = edge; i < run.size() && (i - edge) * STEP < time; i++) {
        windows.add(i);
      }
      int broken = firstFrom(edge, new Condition.Not(c));
      boolean broke = broken < run.size();
      double left = (broken - edge) * STEP - time;
      failed |= broke && left < 0;
      complete |= left >= 0;
      ended = broke ? Math.min(ended, left) : ended;
      lasting = broke ? lasting : Math.max(lasting, left);
    }
    if (!failed && !complete) {
      return notExercised();
    }
    Rho least = least(c, windows);
    return least.isFinite()
        ? judged(!failed, least.told, least.unit)
        : judged(!failed, (ended == INF ? lasting : ended) / 1000, "s");
  }

  private Answer until(Requirement.Until requirement) {
    Condition c = requirement.condition();
    List<Integer> starts = requirement.after().map(this::edges).orElseGet(() -> List.of(0));
    boolean failed = false;
    boolean complete = false;
    double ended = INF;
    double lasting = INF;
    List<Integer> asked = new ArrayList<>();
    for (int start : starts) {
      int stop = firstFrom(start, requirement.end());
      for (int i = start; i < stop; i++) {
        asked.add(i);
      }
      boolean stopped = stop < run.size();
      int broken = firstFrom(start, new Condition.Not(c));
      if (broken < stop) {
        failed = true;
        ended = Math.min(ended, (double) ((broken - stop) * STEP));
      } else if (stopped && stop > start) {
        complete = true;
        int later = firstFrom(stop, new Condition.Not(c));
        double past = (later - stop) * STEP;
        ended = later < run.size() ? Math.min(ended, past) : ended;
        lasting = later < run.size() ? lasting : Math.min(lasting, past);
      }
    }
    if (!failed && !complete) {
      return notExercised();
    }
    Rho least = least(c, asked);
    return least.isFinite()
        ? judged(!failed, least.told, least.unit)
        : judged(!failed, (ended == INF ? lasting : ended) / 1000, "s");
  }

  private Answer count(Requirement.Count requirement) {
    int count = edges(requirement.condition()).size();
    double low =
        requirement.atLeast().isPresent() ? count - requirement.atLeast().getAsLong() : INF;
    double high = requirement.atMost().isPresent() ? requirement.atMost().getAsLong() - count : INF;
    double margin = Math.min(low, high);
    return judged(margin >= 0, margin, "times");
  }

  /** A verdict in the same form. */
  static Answer of(Verdict verdict) {
    OptionalDouble margin = verdict.margin();
    return new Answer(verdict.outcome(), margin.orElse(INF), verdict.marginUnit());
  }
}
