package dev.tankwright.scenario;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.tankwright.loop.Signal;
import dev.tankwright.scenario.condition.Condition;
import dev.tankwright.scenario.condition.Signals;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What holds of margins in whatever run: random requirements over random runs, fixed seeds. */
class MarginPropertiesTest {
  private static final int RUNS = 2000;
  private static final Requirement.Label LABEL = RandomLogic.LABEL;
  private static final long STEP = RandomLogic.STEP;

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4})
  void stepByStepAndWholeRunAgree(long seed) {
    RandomLogic logic = new RandomLogic(seed, seed % 2 == 0);
    int[] outcomes = new int[3];
    for (int i = 0; i < RUNS; i++) {
      Requirement requirement = logic.requirement();
      List<Signals> run = logic.run();
      Verdict verdict = RandomLogic.judge(requirement, run);
      OfflineLogic.Answer wanted = new OfflineLogic(run).answer(requirement);
      OfflineLogic.Answer got = OfflineLogic.of(verdict);
      String text = "seed " + seed + ", " + i + ": " + requirement.statement();
      assertEquals(wanted.outcome(), got.outcome(), text);
      assertEquals(wanted.margin(), got.margin(), 1e-9, text);
      assertEquals(wanted.unit(), got.unit(), text);
      outcomes[verdict.outcome().ordinal()]++;
    }
    for (int count : outcomes) {
      assertTrue(count > RUNS / 50, "every outcome comes up often");
    }
  }

  @ParameterizedTest
  @ValueSource(longs = {5, 6, 7, 8})
  void theSignOfAMarginIsTheOutcome(long seed) {
    RandomLogic logic = new RandomLogic(seed, seed % 2 == 0);
    for (int i = 0; i < RUNS; i++) {
      Requirement requirement = logic.requirement();
      Verdict verdict = RandomLogic.judge(requirement, logic.run());
      double margin = verdict.margin().orElse(0);
      String text = verdict.toString();
      if (margin > 0) {
        assertEquals(Verdict.Outcome.HELD, verdict.outcome(), text);
      } else if (margin < 0) {
        assertEquals(Verdict.Outcome.FAILED, verdict.outcome(), text);
      }
      if (verdict.outcome() == Verdict.Outcome.FAILED) {
        assertTrue(verdict.margin().isPresent(), text);
      }
    }
  }

  private static Condition shifted(Condition c, double by) {
    if (c instanceof Condition.Compare compare) {
      double limit = compare.limit() + by;
      return new Condition.Compare(compare.signal(), compare.order(), limit, limit + " °C");
    } else if (c instanceof Condition.And and) {
      return new Condition.And(shifted(and.left(), by), shifted(and.right(), by));
    } else if (c instanceof Condition.Or or) {
      return new Condition.Or(shifted(or.left(), by), shifted(or.right(), by));
    }
    return c;
  }

  private static List<Requirement> over(Condition c, Condition trigger, Condition end, long time) {
    return List.of(
        new Requirement.Always(LABEL, c),
        new Requirement.Always(LABEL, c, Optional.of(trigger)),
        new Requirement.Never(LABEL, new Condition.Not(c)),
        new Requirement.Eventually(LABEL, c, OptionalLong.empty()),
        new Requirement.Stays(LABEL, c, time, Optional.of(trigger)),
        new Requirement.Until(LABEL, c, end, Optional.of(trigger)));
  }

  @ParameterizedTest
  @ValueSource(longs = {9, 10, 11})
  void limitsMovedByADistanceMoveTheMarginByIt(long seed) {
    RandomLogic logic = new RandomLogic(seed, false);
    int compared = 0;
    for (int i = 0; i < RUNS; i++) {
      Condition c = logic.rising(2);
      Condition trigger = logic.switches(1);
      Condition end = logic.switches(1);
      int by = logic.below(9) - 4;
      List<Signals> run = logic.run();
      List<Requirement> before = over(c, trigger, end, 40);
      List<Requirement> after = over(shifted(c, by), trigger, end, 40);
      for (int k = 0; k < before.size(); k++) {
        Verdict one = RandomLogic.judge(before.get(k), run);
        Verdict other = RandomLogic.judge(after.get(k), run);
        if (one.marginUnit().equals("K") && other.marginUnit().equals("K")) {
          double moved = other.margin().orElseThrow() - one.margin().orElseThrow();
          assertEquals(by, moved, 1e-9, one + " and " + other);
          compared++;
        }
      }
    }
    assertTrue(compared > RUNS, "only " + compared + " were compared");
  }

  @ParameterizedTest
  @ValueSource(longs = {12, 13, 14})
  void timesMovedByATimeMoveTheMarginByIt(long seed) {
    RandomLogic logic = new RandomLogic(seed, false);
    int compared = 0;
    for (int i = 0; i < RUNS; i++) {
      Condition a = logic.switches(1);
      Condition b = logic.switches(1);
      List<Signals> run = logic.run();
      long time = 100 + STEP * logic.below(20);
      long by = STEP * (logic.below(9) - 4);
      compared +=
          moved(new Requirement.Within(LABEL, time, a, b), 1000, run)
                  .isMovedTo(new Requirement.Within(LABEL, time + by, a, b), by)
              + moved(new Requirement.Stays(LABEL, b, time, Optional.of(a)), 1, run)
                  .isMovedTo(new Requirement.Stays(LABEL, b, time + by, Optional.of(a)), -by)
              + moved(new Requirement.Eventually(LABEL, a, OptionalLong.of(time)), 1, run)
                  .isMovedTo(new Requirement.Eventually(LABEL, a, OptionalLong.of(time + by)), by);
    }
    assertTrue(compared > RUNS, "only " + compared + " were compared");
  }

  private static Moved moved(Requirement requirement, double perSecond, List<Signals> run) {
    return new Moved(requirement, perSecond, run);
  }

  private record Moved(Requirement from, double perSecond, List<Signals> run) {
    /** Compares where both are judged by what happened, not by where the run ends. */
    int isMovedTo(Requirement to, long byMillis) {
      Verdict one = RandomLogic.judge(from, run);
      Verdict other = RandomLogic.judge(to, run);
      boolean open = one.detail().contains("run ended") || other.detail().contains("run ended");
      if (open || one.margin().isEmpty() || other.margin().isEmpty()) {
        return 0;
      }
      double moved = other.margin().getAsDouble() - one.margin().getAsDouble();
      assertEquals(byMillis * perSecond / 1000, moved, 1e-9, one + " and " + other);
      return 1;
    }
  }

  @ParameterizedTest
  @ValueSource(longs = {15, 16, 17})
  void signalsThatComeLaterByNoMoreThanTheMarginChangeNothing(long seed) {
    RandomLogic logic = new RandomLogic(seed, false);
    int tried = 0;
    for (int i = 0; i < 5 * RUNS; i++) {
      Requirement always = new Requirement.Always(LABEL, logic.switches(3));
      List<Signals> run = logic.run();
      Verdict verdict = RandomLogic.judge(always, run);
      boolean held = verdict.outcome() == Verdict.Outcome.HELD && verdict.margin().isPresent();
      if (held && verdict.margin().getAsDouble() > 0) {
        int most = (int) Math.round(verdict.margin().getAsDouble() * 1000 / STEP);
        Verdict later = RandomLogic.judge(always, delayed(run, logic, most));
        assertEquals(Verdict.Outcome.HELD, later.outcome(), verdict + " and " + later);
        tried++;
      }
    }
    assertTrue(tried > 50, "only " + tried + " were tried");
  }

  private static List<Signals> delayed(List<Signals> run, RandomLogic logic, int most) {
    int[] by = new int[Signal.all().size()];
    for (int i = 0; i < by.length; i++) {
      by[i] = logic.below(most + 1);
    }
    List<Signals> later = new ArrayList<>();
    for (int i = 0; i < run.size(); i++) {
      Signals now = new Signals();
      for (Signal signal : Signal.all()) {
        now.set(signal, run.get(Math.max(0, i - by[signal.ordinal()])).value(signal));
      }
      later.add(now);
    }
    return later;
  }
}
