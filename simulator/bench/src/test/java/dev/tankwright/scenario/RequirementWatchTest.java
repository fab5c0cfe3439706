package dev.tankwright.scenario;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.tankwright.loop.Signal;
import dev.tankwright.scenario.condition.Condition;
import dev.tankwright.scenario.condition.ConditionParser;
import dev.tankwright.scenario.condition.Signals;
import dev.tankwright.scenario.yaml.Place;
import dev.tankwright.scenario.yaml.TextFault;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import org.junit.jupiter.api.Test;

/** Verdicts on short runs that are worked out by hand. Steps are 10 ms. */
class RequirementWatchTest {
  private static final Requirement.Label LABEL =
      new Requirement.Label("A name", "SR-01", Place.START);

  private final Signals signals = new Signals();
  private long millis;

  private static Condition condition(String text) {
    try {
      return ConditionParser.parse(text);
    } catch (TextFault e) {
      throw new AssertionError(e);
    }
  }

  /** One step for each number. */
  private void run(RequirementWatch watch, Signal signal, double... values) {
    for (double value : values) {
      watch.step(millis, signals.set(signal, value));
      millis += 10;
    }
  }

  private static void assertVerdict(
      Verdict verdict, Verdict.Outcome outcome, long moment, double margin, String unit) {
    assertEquals(outcome, verdict.outcome(), verdict.detail());
    assertEquals(OptionalLong.of(moment), verdict.momentMillis(), verdict.detail());
    assertEquals(OptionalDouble.of(margin), verdict.margin(), verdict.detail());
    assertEquals(unit, verdict.marginUnit());
  }

  private static void assertUnmeasured(Verdict verdict, Verdict.Outcome outcome) {
    assertEquals(outcome, verdict.outcome(), verdict.detail());
    assertEquals(OptionalDouble.empty(), verdict.margin(), verdict.detail());
    assertEquals("", verdict.marginUnit());
  }

  @Test
  void alwaysKeepsTheLeastDistance() {
    RequirementWatch watch =
        new Requirement.Always(LABEL, condition("liquid-temperature < 70 °C")).watch();
    run(watch, Signal.LIQUID_TEMPERATURE, 60, 66, 68.5, 64);
    Verdict verdict = watch.verdict(40);
    assertVerdict(verdict, Verdict.Outcome.HELD, 20, 1.5, "K");
    assertEquals("A name", verdict.name());
    assertEquals("SR-01", verdict.id());
    assertEquals("always liquid-temperature < 70 °C", verdict.statement());
    assertEquals(
        "Closest at 0.02 s: liquid-temperature 68.5 °C; 1.5 K from failing.", verdict.detail());
  }

  @Test
  void alwaysFailsByTheGreatestExcess() {
    RequirementWatch watch =
        new Requirement.Always(LABEL, condition("liquid-temperature < 70 °C")).watch();
    run(watch, Signal.LIQUID_TEMPERATURE, 60, 71, 75, 64);
    Verdict verdict = watch.verdict(40);
    assertVerdict(verdict, Verdict.Outcome.FAILED, 20, -5, "K");
    assertEquals(
        "First violated at 0.01 s: liquid-temperature 71 °C; worst at 0.02 s: liquid-temperature 75"
            + " °C; beyond the limit by 5 K; violated in 2 of 4 steps.",
        verdict.detail());
  }

  @Test
  void alwaysFailsAtTheLimitItself() {
    RequirementWatch watch = new Requirement.Always(LABEL, condition("volume < 5 L")).watch();
    run(watch, Signal.VOLUME, 4, 5);
    assertVerdict(watch.verdict(20), Verdict.Outcome.FAILED, 10, 0, "L");
  }

  @Test
  void neverOfSwitchesHasNoMarginWhileNoneMovesAndFailsByItsTime() {
    signals.set(Signal.ULTRASOUND, 1);
    Requirement never = new Requirement.Never(LABEL, condition("ultrasound and lid-open"));
    RequirementWatch held = never.watch();
    run(held, Signal.LID_OPEN, 0, 0);
    assertUnmeasured(held.verdict(20), Verdict.Outcome.HELD);
    assertEquals("In none of the run's 2 steps.", held.verdict(20).detail());
    RequirementWatch failed = never.watch();
    run(failed, Signal.LID_OPEN, 0, 1, 1, 0);
    Verdict verdict = failed.verdict(60);
    assertVerdict(verdict, Verdict.Outcome.FAILED, 30, -0.02, "s");
    assertEquals(
        "First violated at 0.03 s: ultrasound, lid-open; for 0.02 s; violated in 2 of 4 steps.",
        verdict.detail());
  }

  @Test
  void aFractionIsToldInPercent() {
    RequirementWatch watch =
        new Requirement.Never(LABEL, condition("dissolved-gas > 80 %")).watch();
    run(watch, Signal.DISSOLVED_GAS, 0.5, 0.75);
    Verdict verdict = watch.verdict(20);
    assertEquals(0.05, verdict.margin().orElseThrow(), 1e-12);
    assertEquals("Closest at 0.01 s: dissolved-gas 75 %; 5 % from failing.", verdict.detail());
  }

  @Test
  void aNumberThatNeverMattersGivesNoMargin() {
    RequirementWatch watch =
        new Requirement.Always(LABEL, condition("not heater or volume > 2 L")).watch();
    run(watch, Signal.VOLUME, 1, 0.5);
    assertUnmeasured(watch.verdict(20), Verdict.Outcome.HELD);
  }

  @Test
  void eventuallyBeforeHasTheTimeLeft() {
    Requirement requirement =
        new Requirement.Eventually(LABEL, condition("phase = COMPLETE"), OptionalLong.of(50));
    double complete = Signal.PHASE.words().indexOf("COMPLETE");
    RequirementWatch early = requirement.watch();
    run(early, Signal.PHASE, 0, 0, complete, 0);
    assertVerdict(early.verdict(100), Verdict.Outcome.HELD, 20, 0.03, "s");
    assertEquals("eventually phase = COMPLETE before 50 ms", early.verdict(100).statement());
    millis = 0;
    RequirementWatch just = requirement.watch();
    run(just, Signal.PHASE, 0, 0, 0, 0, 0, complete);
    assertVerdict(just.verdict(100), Verdict.Outcome.HELD, 50, 0, "s");
    millis = 0;
    RequirementWatch late = requirement.watch();
    run(late, Signal.PHASE, 0, 0, 0, 0, 0, 0, 0, complete);
    assertVerdict(late.verdict(100), Verdict.Outcome.FAILED, 70, -0.02, "s");
    assertEquals("First true at 0.07 s: phase COMPLETE; 0.02 s late.", late.verdict(100).detail());
    RequirementWatch never = requirement.watch();
    run(never, Signal.PHASE, 0);
    assertVerdict(never.verdict(100), Verdict.Outcome.FAILED, 100, -0.05, "s");
    assertEquals(
        "Never became true; the run ended at 0.1 s, 0.05 s after the limit.",
        never.verdict(100).detail());
  }

  @Test
  void eventuallyOfASwitchHasTheTimeLeftInTheRun() {
    RequirementWatch watch =
        new Requirement.Eventually(LABEL, condition("heater"), OptionalLong.empty()).watch();
    run(watch, Signal.HEATER, 0, 1, 0);
    assertVerdict(watch.verdict(2000), Verdict.Outcome.HELD, 10, 1.99, "s");
  }

  @Test
  void eventuallyOfANumberHasTheGreatestDistance() {
    Requirement requirement =
        new Requirement.Eventually(
            LABEL, condition("liquid-temperature > 40 °C"), OptionalLong.empty());
    RequirementWatch held = requirement.watch();
    run(held, Signal.LIQUID_TEMPERATURE, 39, 41, 43, 42);
    Verdict verdict = held.verdict(40);
    assertVerdict(verdict, Verdict.Outcome.HELD, 10, 3, "K");
    assertEquals(
        "First true at 0.01 s: liquid-temperature 41 °C; farthest at 0.02 s: liquid-temperature 43"
            + " °C, by 3 K.",
        verdict.detail());
    RequirementWatch failed = requirement.watch();
    run(failed, Signal.LIQUID_TEMPERATURE, 30, 38, 36);
    verdict = failed.verdict(100);
    assertVerdict(verdict, Verdict.Outcome.FAILED, 50, -2, "K");
    assertEquals(
        "Never became true; the run ended at 0.1 s; closest at 0.05 s:"
            + " liquid-temperature 38 °C, short by 2 K.",
        verdict.detail());
  }

  private RequirementWatch within(long limit) {
    return new Requirement.Within(LABEL, limit, condition("lid-open"), condition("not ultrasound"))
        .watch();
  }

  /** One step for each pair of characters: lid open, ultrasound on. */
  private void runPairs(RequirementWatch watch, String... pairs) {
    for (String pair : pairs) {
      signals.set(Signal.ULTRASOUND, pair.charAt(1) == 'u' ? 1 : 0);
      run(watch, Signal.LID_OPEN, pair.charAt(0) == 'o' ? 1 : 0);
    }
  }

  @Test
  void withinMeasuresTheSlowestReaction() {
    RequirementWatch watch = within(20);
    runPairs(watch, "-u", "ou", "o-", "-u", "ou", "ou", "o-", "--", "o-");
    Verdict verdict = watch.verdict(90);
    assertVerdict(verdict, Verdict.Outcome.HELD, 40, 0, "ms");
    assertEquals("within 20 ms after lid-open: not ultrasound", verdict.statement());
    assertEquals(
        "Reaction after 20 ms to the trigger at 0.04 s, the slowest of 3; limit 20 ms.",
        verdict.detail());
  }

  @Test
  void withinCountsAReactionInTheTriggersOwnStepAsZero() {
    RequirementWatch watch = within(20);
    runPairs(watch, "o-", "ou");
    assertVerdict(watch.verdict(20), Verdict.Outcome.HELD, 0, 20, "ms");
  }

  @Test
  void withinFailsWhenTheReactionIsLate() {
    RequirementWatch watch = within(20);
    runPairs(watch, "-u", "ou", "ou", "ou", "o-");
    assertVerdict(watch.verdict(50), Verdict.Outcome.FAILED, 10, -10, "ms");
  }

  @Test
  void withinCountsFromTheOldestOfOverlappingTriggers() {
    RequirementWatch watch = within(30);
    runPairs(watch, "ou", "-u", "ou", "-u", "o-");
    assertVerdict(watch.verdict(50), Verdict.Outcome.FAILED, 0, -10, "ms");
  }

  @Test
  void withinIsLateByAtLeastTheRestOfTheRunWhenNothingReacts() {
    RequirementWatch watch = within(20);
    runPairs(watch, "o-", "-u", "ou", "-u", "-u");
    assertVerdict(watch.verdict(50), Verdict.Outcome.FAILED, 20, 0, "ms");
    runPairs(watch, "-u", "-u", "-u");
    assertVerdict(watch.verdict(80), Verdict.Outcome.FAILED, 20, -30, "ms");
    Verdict verdict = watch.verdict(50);
    assertEquals(
        "Triggered at 0.02 s and without reaction when the run ended at 0.05 s.", verdict.detail());
  }

  @Test
  void withinLeavesATriggerOpenThatComesTooLateToJudge() {
    RequirementWatch watch = within(30);
    runPairs(watch, "-u", "ou", "ou", "ou");
    Verdict verdict = watch.verdict(40);
    assertUnmeasured(verdict, Verdict.Outcome.NOT_EXERCISED);
    assertEquals(
        "Triggered at 0.01 s; the run ended before the limit had passed.", verdict.detail());
    runPairs(watch, "ou");
    assertVerdict(watch.verdict(50), Verdict.Outcome.FAILED, 10, 0, "ms");
  }

  @Test
  void withinIsNotExercisedWithoutTrigger() {
    RequirementWatch watch = within(30);
    runPairs(watch, "-u", "--");
    Verdict verdict = watch.verdict(20);
    assertUnmeasured(verdict, Verdict.Outcome.NOT_EXERCISED);
    assertEquals(OptionalLong.empty(), verdict.momentMillis());
    assertEquals("It was never triggered.", verdict.detail());
  }

  @Test
  void withinTellsLongLimitsInSeconds() {
    RequirementWatch watch = within(10_000);
    runPairs(watch, "ou", "o-");
    assertVerdict(watch.verdict(20), Verdict.Outcome.HELD, 0, 9.99, "s");
  }

  @Test
  void aRunWithoutStepsExercisesNothing() {
    Condition heater = condition("heater");
    for (Requirement requirement :
        new Requirement[] {
          new Requirement.Always(LABEL, heater),
          new Requirement.Never(LABEL, heater),
          new Requirement.Eventually(LABEL, heater, OptionalLong.empty()),
          new Requirement.Within(LABEL, 10, heater, heater),
          new Requirement.Stays(LABEL, heater, 10, Optional.empty()),
          new Requirement.Until(LABEL, heater, heater, Optional.empty()),
          new Requirement.Count(LABEL, heater, OptionalLong.empty(), OptionalLong.of(1))
        }) {
      assertUnmeasured(requirement.watch().verdict(0), Verdict.Outcome.NOT_EXERCISED);
    }
  }
}
