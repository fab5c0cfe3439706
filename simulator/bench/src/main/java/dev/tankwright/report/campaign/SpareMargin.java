package dev.tankwright.report.campaign;

import dev.tankwright.campaign.CaseOutcome;
import dev.tankwright.campaign.CellSummary;
import java.util.Locale;

/**
 * How much a cell has to spare, in steps of ten: what its colour and its sign say. A comfortable
 * margin is 10 K, 1 min and so on, see {@link dev.tankwright.campaign.Margin#comfort()}.
 */
public enum SpareMargin {
  /** At least a comfortable margin. */
  AMPLE("ample", "at least 10 K, 1 min, 1 L, 100 W or 1; 100 ms for reactions"),
  /** At least a tenth of it. */
  FAIR("fair", "at least a tenth of that"),
  /** At least a hundredth. */
  CLOSE("close", "at least a hundredth"),
  /** Less, and still held. */
  TIGHT("tight", "less, but held"),
  /** It held, and has no margin that could be measured. */
  UNMEASURED("no measure", "held, without a margin"),
  /** It shows nothing: the phase was never reached, or nothing was put to the test. */
  EMPTY("not shown", "not reached, or not exercised"),
  /** At least one case failed. */
  FAILED("failed", "at least one case failed");

  private static final double FAIR_FROM = 0.1;
  private static final double CLOSE_FROM = 0.01;

  private final String word;
  private final String meaning;

  SpareMargin(String word, String meaning) {
    this.word = word;
    this.meaning = meaning;
  }

  static SpareMargin of(CellSummary cell) {
    if (cell.outcome() == CaseOutcome.FAILED) {
      return FAILED;
    }
    if (cell.outcome() != CaseOutcome.HELD) {
      return EMPTY;
    }
    if (cell.leastMargin().isEmpty()) {
      return UNMEASURED;
    }
    double comfort = cell.leastMargin().get().comfort();
    if (comfort >= 1) {
      return AMPLE;
    }
    return comfort >= FAIR_FROM ? FAIR : comfort >= CLOSE_FROM ? CLOSE : TIGHT;
  }

  /** In one or two words. */
  public String word() {
    return word;
  }

  /** What the word means. */
  String meaning() {
    return meaning;
  }

  /** Name in the style sheet, and of the drawn sign. */
  String key() {
    return name().toLowerCase(Locale.ROOT);
  }
}
