package dev.tankwright.scenario;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.tankwright.loop.Signal;
import dev.tankwright.scenario.condition.Condition;
import dev.tankwright.scenario.condition.Signals;
import dev.tankwright.scenario.yaml.Place;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import org.junit.jupiter.api.Test;

/**
 * Verdicts on runs of a few steps of 10 ms that are worked out by hand. A run is a word: each
 * letter is a step, {@code l} with the lid open, {@code u} with ultrasound, {@code b} with both,
 * {@code -} with neither.
 */
class StaysUntilCountTest {
  private static final Requirement.Label LABEL = new Requirement.Label("x", "", Place.START);
  private static final Optional<Condition> NO = Optional.empty();

  private final Signals signals = new Signals();

  private Verdict run(Requirement requirement, String steps) {
    RequirementWatch watch = requirement.watch();
    for (int i = 0; i < steps.length(); i++) {
      char step = steps.charAt(i);
      signals.set(Signal.LID_OPEN, step == 'l' || step == 'b' ? 1 : 0);
      signals.set(Signal.ULTRASOUND, step == 'u' || step == 'b' ? 1 : 0);
      signals.set(Signal.LIQUID_TEMPERATURE, Character.isDigit(step) ? step - '0' : 0);
      watch.step(10L * i, signals);
    }
    return watch.verdict(10L * steps.length());
  }

  private static void assertVerdict(
      Verdict verdict, Verdict.Outcome outcome, double margin, String unit) {
    assertEquals(outcome, verdict.outcome(), verdict.detail());
    assertEquals(OptionalDouble.of(margin), verdict.margin(), verdict.detail());
    assertEquals(unit, verdict.marginUnit());
  }

  private static void assertNotExercised(Verdict verdict, String detail) {
    assertEquals(Verdict.Outcome.NOT_EXERCISED, verdict.outcome(), verdict.detail());
    assertEquals(OptionalDouble.empty(), verdict.margin());
    assertEquals(detail, verdict.detail());
  }

  private static Requirement silentFor(long millis) {
    return new Requirement.Stays(
        LABEL, Condition.of("not ultrasound"), millis, Optional.of(Condition.of("lid-open")));
  }

  @Test
  void staysMeasuresTheShortestStayBeyondItsTime() {
    Verdict verdict = run(silentFor(20), "u-lll-u-l----uu");
    assertVerdict(verdict, Verdict.Outcome.HELD, 0.02, "s");
    assertEquals("stays not ultrasound for 20 ms after lid-open", verdict.statement());
    assertEquals("Shortest duration 0.04 s, from 0.02 s.", verdict.detail());
    assertVerdict(run(silentFor(40), "u-lll-u-l----uu"), Verdict.Outcome.HELD, 0, "s");
  }

  @Test
  void staysFailsByTheTimeThatIsMissing() {
    Verdict verdict = run(silentFor(50), "u-lll-u-l----uu");
    assertVerdict(verdict, Verdict.Outcome.FAILED, -0.01, "s");
    assertEquals(OptionalLong.of(60), verdict.momentMillis());
    assertEquals(
        "First violated at 0.06 s: ultrasound; shortest duration 0.04 s from 0.02 s of 50 ms.",
        verdict.detail());
    assertVerdict(run(silentFor(50), "b"), Verdict.Outcome.FAILED, -0.05, "s");
  }

  @Test
  void staysCountsTheLatestOfOverlappingTriggers() {
    assertVerdict(run(silentFor(30), "l-l-u"), Verdict.Outcome.FAILED, -0.01, "s");
  }

  @Test
  void staysThatOutlastTheRunAreAtLeastSoLong() {
    assertVerdict(run(silentFor(30), "-l----"), Verdict.Outcome.HELD, 0.02, "s");
  }

  @Test
  void staysIsNotExercisedByAWindowCutShort() {
    assertNotExercised(run(silentFor(30), "u-u"), "It was never triggered.");
    assertNotExercised(
        run(silentFor(30), "u-l-"), "Triggered at 0.02 s; the run ended before the time was over.");
  }

  @Test
  void staysWithoutTriggerAsksForTheLengthOfEveryStay() {
    Requirement requirement = new Requirement.Stays(LABEL, Condition.of("ultrasound"), 30, NO);
    assertVerdict(run(requirement, "-uuuu-uuu-"), Verdict.Outcome.HELD, 0, "s");
    assertVerdict(run(requirement, "-uuuu-u-uuu-"), Verdict.Outcome.FAILED, -0.02, "s");
    assertEquals(
        "stays ultrasound for 30 ms whenever it becomes true", run(requirement, "-").statement());
  }

  @Test
  void staysOfANumberHasTheLeastDistanceInAllWindows() {
    Requirement requirement =
        new Requirement.Stays(
            LABEL,
            Condition.of("liquid-temperature < 7 °C"),
            20,
            Optional.of(Condition.of("liquid-temperature > 2 °C")));
    Verdict held = run(requirement, "0348850");
    assertVerdict(held, Verdict.Outcome.HELD, 3, "K");
    Verdict failed = run(requirement, "0380");
    assertVerdict(failed, Verdict.Outcome.FAILED, -1, "K");
  }

  private static Requirement silentUntilClosed(boolean triggered) {
    Optional<Condition> after = triggered ? Optional.of(Condition.of("lid-open")) : NO;
    return new Requirement.Until(
        LABEL, Condition.of("not ultrasound"), Condition.of("not lid-open"), after);
  }

  @Test
  void untilMeasuresHowLongItHoldsBeyondItsEnd() {
    Verdict verdict = run(silentUntilClosed(true), "ull--ull-u");
    assertVerdict(verdict, Verdict.Outcome.HELD, 0.01, "s");
    assertEquals(OptionalLong.of(80), verdict.momentMillis());
    assertEquals("holds not ultrasound until not lid-open after lid-open", verdict.statement());
    assertEquals("Held until 0.08 s and 0.01 s longer.", verdict.detail());
  }

  @Test
  void untilMayEndInTheVeryStepOfItsEnd() {
    assertVerdict(run(silentUntilClosed(true), "ulluu"), Verdict.Outcome.HELD, 0, "s");
  }

  @Test
  void untilFailsByTheTimeFromTheBreakToTheEnd() {
    Verdict verdict = run(silentUntilClosed(true), "ulblb-");
    assertVerdict(verdict, Verdict.Outcome.FAILED, -0.03, "s");
    assertEquals(
        "First violated at 0.02 s: ultrasound, before 'not lid-open' became true.",
        verdict.detail());
    assertVerdict(run(silentUntilClosed(true), "ulbb"), Verdict.Outcome.FAILED, -0.02, "s");
  }

  @Test
  void untilWithoutTriggerBeginsWithTheRun() {
    assertVerdict(run(silentUntilClosed(false), "ll-u"), Verdict.Outcome.HELD, 0.01, "s");
    assertVerdict(run(silentUntilClosed(false), "ll--lb"), Verdict.Outcome.HELD, 0.03, "s");
    assertVerdict(run(silentUntilClosed(false), "lb-"), Verdict.Outcome.FAILED, -0.01, "s");
  }

  @Test
  void untilIsNotExercisedWhereNothingWasAskedOrTheEndNeverCame() {
    assertNotExercised(run(silentUntilClosed(true), "u--"), "It was never triggered.");
    assertNotExercised(
        run(silentUntilClosed(true), "-lll"),
        "'not lid-open' did not become true before the run ended.");
    assertNotExercised(
        run(silentUntilClosed(false), "-l"),
        "'not lid-open' already held whenever it was triggered.");
  }

  private static Requirement count(long atLeast, long atMost) {
    return new Requirement.Count(
        LABEL, Condition.of("ultrasound"), OptionalLong.of(atLeast), OptionalLong.of(atMost));
  }

  @Test
  void countTakesRisingEdgesAndTheFirstStep() {
    Verdict verdict = run(count(1, 5), "uu-u--u");
    assertVerdict(verdict, Verdict.Outcome.HELD, 2, "times");
    assertEquals("count ultrasound: at least 1, at most 5", verdict.statement());
    assertEquals("Became true 3 times, last at 0.06 s.", verdict.detail());
    assertVerdict(run(count(3, 9), "uu-u--u"), Verdict.Outcome.HELD, 0, "times");
  }

  @Test
  void countFailsByTheTimesItIsOff() {
    Verdict often = run(count(0, 1), "-u-u-u");
    assertVerdict(often, Verdict.Outcome.FAILED, -2, "times");
    assertEquals(OptionalLong.of(30), often.momentMillis());
    assertVerdict(run(count(2, 9), "---"), Verdict.Outcome.FAILED, -2, "times");
  }

  @Test
  void whileLeavesOutEveryOtherStep() {
    Optional<Condition> open = Optional.of(Condition.of("lid-open"));
    Requirement never = new Requirement.Never(LABEL, Condition.of("ultrasound"), open);
    assertNotExercised(run(never, "uu-"), "'lid-open' never held in the run.");
    Verdict held = run(never, "u--l-u");
    assertVerdict(held, Verdict.Outcome.HELD, 0.01, "s");
    assertEquals("never ultrasound while lid-open", held.statement());
    assertEquals(
        "In none of these 1 steps; closest at 0.05 s, with 0.01 s to spare.", held.detail());
    assertVerdict(run(never, "ubbl"), Verdict.Outcome.FAILED, -0.02, "s");
    Requirement always =
        new Requirement.Always(LABEL, Condition.of("liquid-temperature < 5 °C"), open);
    assertNotExercised(run(always, "99"), "'lid-open' never held in the run.");
    assertVerdict(run(always, "9l"), Verdict.Outcome.HELD, 5, "K");
  }

  @Test
  void unitsOfSeveralKindsAreWeighedByTheirLimitsAndToldForTheOneThatDecides() {
    Requirement always =
        new Requirement.Always(LABEL, Condition.of("liquid-temperature < 50 °C and volume < 6 L"));
    RequirementWatch watch = always.watch();
    signals.set(Signal.LIQUID_TEMPERATURE, 47).set(Signal.VOLUME, 3);
    watch.step(0, signals);
    assertVerdict(watch.verdict(10), Verdict.Outcome.HELD, 3, "K");
    // 5 % of 6 L is nearer than 6 % of 50 °C, though 0.3 would be the lesser number anyway.
    signals.set(Signal.VOLUME, 5.7);
    watch.step(10, signals);
    Verdict verdict = watch.verdict(20);
    assertEquals("L", verdict.marginUnit());
    assertEquals(0.3, verdict.margin().orElseThrow(), 1e-9);
    signals.set(Signal.LIQUID_TEMPERATURE, 52).set(Signal.VOLUME, 6.1);
    watch.step(20, signals);
    assertVerdict(watch.verdict(30), Verdict.Outcome.FAILED, -2, "K");
  }
}
