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
public record Finding(Verdict.Outcome outcome, OptionalDouble margin, String unit) {
  private static final Finding HELD = plain(Verdict.Outcome.HELD);
  private static final Finding FAILED = plain(Verdict.Outcome.FAILED);
  private static final Finding NOT_EXERCISED = plain(Verdict.Outcome.NOT_EXERCISED);

  private static Finding plain(Verdict.Outcome outcome) {
    return new Finding(outcome, OptionalDouble.empty(), "");
  }

  /** A finding without a margin. */
  static Finding of(Verdict.Outcome outcome) {
    return switch (outcome) {
      case HELD -> HELD;
      case FAILED -> FAILED;
      case NOT_EXERCISED -> NOT_EXERCISED;
    };
  }

  /** What a verdict says, without its words. */
  static Finding of(Verdict verdict) {
    return verdict.margin().isEmpty()
        ? of(verdict.outcome())
        : new Finding(verdict.outcome(), verdict.margin(), verdict.marginUnit());
  }
}
