package dev.tankwright.campaign;

import dev.tankwright.scenario.Verdict;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * What became of one requirement over all cases in which a fault was injected. Immutable.
 *
 * @param required which
 * @param held in how many cases it held
 * @param failed in how many it failed
 * @param notExercised in how many nothing put it to the test; when that is all of them, the whole
 *     campaign says nothing about it
 * @param leastMargin its least margin in any case
 * @param worstCase number of the case with that margin, or of the first that failed; empty when it
 *     was never put to the test
 */
public record RequirementSummary(
    Required required,
    int held,
    int failed,
    int notExercised,
    Optional<Margin> leastMargin,
    OptionalInt worstCase) {
  /** True when no case put it to the test. */
  public boolean isVacuous() {
    return held + failed == 0;
  }

  /** Sums up the requirement at one position. */
  static RequirementSummary of(List<CaseResult> cases, int index, Required required) {
    int[] counts = new int[Verdict.Outcome.values().length];
    CaseResult worst = null;
    for (CaseResult result : cases) {
      if (result.onsetMillis().isPresent()) {
        CaseVerdict finding = result.findings().get(index);
        counts[finding.outcome().ordinal()]++;
        boolean shown = finding.outcome() != Verdict.Outcome.NOT_EXERCISED;
        worst = shown && (worst == null || isWorse(result, worst, index)) ? result : worst;
      }
    }
    Optional<Margin> least = leastMargin(cases, index, required);
    return new RequirementSummary(
        required,
        counts[Verdict.Outcome.HELD.ordinal()],
        counts[Verdict.Outcome.FAILED.ordinal()],
        counts[Verdict.Outcome.NOT_EXERCISED.ordinal()],
        least,
        worst == null ? OptionalInt.empty() : OptionalInt.of(worst.number()));
  }

  private static boolean isWorse(CaseResult one, CaseResult other, int index) {
    CaseVerdict mine = one.findings().get(index);
    CaseVerdict theirs = other.findings().get(index);
    if (mine.outcome() != theirs.outcome()) {
      return mine.outcome() == Verdict.Outcome.FAILED;
    }
    return mine.margin().orElse(Double.MAX_VALUE) < theirs.margin().orElse(Double.MAX_VALUE);
  }

  private static Optional<Margin> leastMargin(
      List<CaseResult> cases, int index, Required required) {
    Margin least = null;
    for (CaseResult result : cases) {
      CaseVerdict finding = result.findings().get(index);
      if (result.onsetMillis().isPresent() && finding.margin().isPresent()) {
        double value = finding.margin().getAsDouble();
        least = Margin.less(least, new Margin(value, finding.unit(), required.name()));
      }
    }
    return Optional.ofNullable(least);
  }
}
