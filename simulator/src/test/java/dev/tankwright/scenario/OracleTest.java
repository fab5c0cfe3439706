package dev.tankwright.scenario;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.tankwright.loop.Signal;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Holds the step-by-step judges against a second, naive reading of the semantics that looks at
 * whole recorded runs: random conditions over random runs, from fixed seeds.
 */
class OracleTest {
  private static final int RUNS = 400;
  private static final long STEP = 10;
  private static final Requirement.Label LABEL = new Requirement.Label("x", "", Place.START);
  private static final Signal[] NUMBERS = {Signal.LIQUID_TEMPERATURE, Signal.WALL_TEMPERATURE};
  private static final Signal[] SWITCHES = {Signal.HEATER, Signal.LID_OPEN};

  private static List<Signals> randomRun(Random random) {
    List<Signals> run = new ArrayList<>();
    int steps = 1 + random.nextInt(60);
    Signals last = new Signals();
    for (int i = 0; i < steps; i++) {
      Signals now = new Signals();
      for (Signal signal : NUMBERS) {
        now.set(signal, random.nextInt(21));
      }
      for (Signal signal : SWITCHES) {
        boolean flip = random.nextInt(5) == 0;
        now.set(signal, flip ? 1 - last.value(signal) : last.value(signal));
      }
      run.add(now);
      last = now;
    }
    return run;
  }

  private static Condition randomCondition(Random random, int depth) {
    int kind = random.nextInt(depth == 0 ? 2 : 5);
    return switch (kind) {
      case 0 -> {
        Condition.Order order = Condition.Order.values()[random.nextInt(4)];
        int limit = random.nextInt(21);
        yield new Condition.Compare(NUMBERS[random.nextInt(2)], order, limit, limit + " °C");
      }
      case 1 -> new Condition.On(SWITCHES[random.nextInt(2)]);
      case 2 -> new Condition.Not(randomCondition(random, depth - 1));
      case 3 ->
          new Condition.And(randomCondition(random, depth - 1), randomCondition(random, depth - 1));
      default ->
          new Condition.Or(randomCondition(random, depth - 1), randomCondition(random, depth - 1));
    };
  }

  private static Verdict judge(Requirement requirement, List<Signals> run) {
    RequirementWatch watch = requirement.watch();
    for (int i = 0; i < run.size(); i++) {
      watch.step(i * STEP, run.get(i));
    }
    return watch.verdict((run.size() - 1) * STEP);
  }

  private static OptionalDouble finite(double value) {
    return Double.isFinite(value) ? OptionalDouble.of(value) : OptionalDouble.empty();
  }

  private static OptionalDouble measured(Condition condition, double value) {
    return condition.measure().isPresent() ? finite(value) : OptionalDouble.empty();
  }

  private static Verdict.Outcome outcome(boolean held) {
    return held ? Verdict.Outcome.HELD : Verdict.Outcome.FAILED;
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3})
  void robustnessHasTheSignOfTheAnswer(long seed) {
    Random random = new Random(seed);
    for (int i = 0; i < RUNS; i++) {
      Condition condition = randomCondition(random, 3);
      for (Signals now : randomRun(random)) {
        double robustness = condition.robustness(now);
        if (robustness != 0) {
          assertEquals(robustness > 0, condition.holds(now), condition.toString());
        }
      }
    }
  }

  @ParameterizedTest
  @ValueSource(longs = {4, 5, 6})
  void alwaysAndNeverAgree(long seed) {
    Random random = new Random(seed);
    for (int i = 0; i < RUNS; i++) {
      Condition c = randomCondition(random, 3);
      List<Signals> run = randomRun(random);
      double least = run.stream().mapToDouble(c::robustness).min().orElseThrow();
      Verdict always = judge(new Requirement.Always(LABEL, c), run);
      assertEquals(outcome(run.stream().allMatch(c::holds)), always.outcome(), c.toString());
      assertEquals(measured(c, least), always.margin(), c.toString());
      double most = run.stream().mapToDouble(c::robustness).max().orElseThrow();
      Verdict never = judge(new Requirement.Never(LABEL, c), run);
      assertEquals(outcome(run.stream().noneMatch(c::holds)), never.outcome(), c.toString());
      assertEquals(measured(c, -most), never.margin(), c.toString());
    }
  }

  @ParameterizedTest
  @ValueSource(longs = {7, 8, 9})
  void eventuallyAgrees(long seed) {
    Random random = new Random(seed);
    for (int i = 0; i < RUNS; i++) {
      Condition c = randomCondition(random, 3);
      List<Signals> run = randomRun(random);
      long end = (run.size() - 1) * STEP;
      int first = 0;
      while (first < run.size() && !c.holds(run.get(first))) {
        first++;
      }
      boolean found = first < run.size();
      long before = random.nextInt(600);
      Verdict bounded = judge(new Requirement.Eventually(LABEL, c, OptionalLong.of(before)), run);
      OptionalDouble left =
          found ? OptionalDouble.of((before - first * STEP) / 1000.0) : OptionalDouble.empty();
      assertEquals(outcome(found && first * STEP <= before), bounded.outcome(), c.toString());
      assertEquals(left, bounded.margin(), c.toString());
      Verdict free = judge(new Requirement.Eventually(LABEL, c, OptionalLong.empty()), run);
      double most = run.stream().mapToDouble(c::robustness).max().orElseThrow();
      OptionalDouble margin = measured(c, most);
      if (margin.isEmpty() && found) {
        margin = OptionalDouble.of((end - first * STEP) / 1000.0);
      }
      assertEquals(outcome(found), free.outcome(), c.toString());
      assertEquals(margin, free.margin(), c.toString());
    }
  }

  @ParameterizedTest
  @ValueSource(longs = {10, 11, 12})
  void withinAgrees(long seed) {
    Random random = new Random(seed);
    for (int i = 0; i < RUNS; i++) {
      Condition after = randomCondition(random, 2);
      Condition holds = randomCondition(random, 2);
      List<Signals> run = randomRun(random);
      long limit = random.nextInt(8) * 5L;
      Verdict verdict = judge(new Requirement.Within(LABEL, limit, after, holds), run);
      String text = "within " + limit + " after " + after + ": " + holds;
      assertEquals(outcomeWithin(run, after, holds, limit), verdict.outcome(), text);
    }
  }

  /** Looks at every edge by itself, without any memory of the others. */
  private static Verdict.Outcome outcomeWithin(
      List<Signals> run, Condition after, Condition holds, long limit) {
    boolean anyHeld = false;
    boolean anyFailed = false;
    for (int edge = 0; edge < run.size(); edge++) {
      boolean rises = after.holds(run.get(edge)) && (edge == 0 || !after.holds(run.get(edge - 1)));
      if (!rises) {
        continue;
      }
      int reaction = edge;
      while (reaction < run.size() && !holds.holds(run.get(reaction))) {
        reaction++;
      }
      boolean reacted = reaction < run.size();
      boolean elapsed = (run.size() - 1 - edge) * STEP >= limit;
      anyHeld |= reacted && (reaction - edge) * STEP <= limit;
      anyFailed |= reacted ? (reaction - edge) * STEP > limit : elapsed;
    }
    if (anyFailed) {
      return Verdict.Outcome.FAILED;
    }
    return anyHeld ? Verdict.Outcome.HELD : Verdict.Outcome.NOT_EXERCISED;
  }
}
