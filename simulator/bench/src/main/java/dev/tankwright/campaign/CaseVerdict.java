package dev.tankwright.campaign;

import dev.tankwright.scenario.Verdict;
import java.util.OptionalDouble;

/**
 * What became of one requirement in one case.
 *
 * @param outcome held, failed or not exercised
 * @param margin how far it stayed from failing; empty where it has no measure
 * @param unit unit of the margin, empty for a share or without one
 */
public record CaseVerdict(Verdict.Outcome outcome, OptionalDouble margin, String unit) {
  private static final CaseVerdict HELD = plain(Verdict.Outcome.HELD);
  private static final CaseVerdict FAILED = plain(Verdict.Outcome.FAILED);
  private static final CaseVerdict NOT_EXERCISED = plain(Verdict.Outcome.NOT_EXERCISED);

  private static CaseVerdict plain(Verdict.Outcome outcome) {
    return new CaseVerdict(outcome, OptionalDouble.empty(), "");
  }

  /** A finding without a margin. */
  static CaseVerdict of(Verdict.Outcome outcome) {
    return switch (outcome) {
      case HELD -> HELD;
      case FAILED -> FAILED;
      case NOT_EXERCISED -> NOT_EXERCISED;
    };
  }

  /** What a verdict says, without its words. */
  static CaseVerdict of(Verdict verdict) {
    return verdict.margin().isEmpty()
        ? of(verdict.outcome())
        : new CaseVerdict(verdict.outcome(), verdict.margin(), verdict.marginUnit());
  }
}
