package dev.tankwright.report.results;

import dev.tankwright.scenario.Verdict;
import java.util.List;

/**
 * How many requirements came to what, and what that makes of the run.
 *
 * @param held how many held
 * @param failed how many failed
 * @param notExercised how many nothing put to the test
 */
public record Tally(int held, int failed, int notExercised) {

  /** Counts verdicts. */
  public static Tally of(List<Verdict> verdicts) {
    int[] counts = new int[3];
    for (Verdict verdict : verdicts) {
      switch (verdict.outcome()) {
        case HELD -> counts[0]++;
        case FAILED -> counts[1]++;
        case NOT_EXERCISED -> counts[2]++;
      }
    }
    return new Tally(counts[0], counts[1], counts[2]);
  }

  public int all() {
    return held + failed + notExercised;
  }

  /** The worst there is; no requirement at all shows nothing. */
  public Verdict.Outcome outcome() {
    if (failed > 0) {
      return Verdict.Outcome.FAILED;
    }
    return notExercised > 0 || held == 0 ? Verdict.Outcome.NOT_EXERCISED : Verdict.Outcome.HELD;
  }

  /** The run in a few words. */
  public String headline() {
    if (all() == 0) {
      return "No requirements";
    }
    return switch (outcome()) {
      case HELD -> held == 1 ? "The one requirement held" : "All " + held + " held";
      case FAILED -> failed + " of " + all() + " failed";
      case NOT_EXERCISED -> notExercised + " of " + all() + " not exercised";
    };
  }

  /** What the headline leaves out, or empty. */
  public String rest() {
    StringBuilder out = new StringBuilder();
    if (outcome() != Verdict.Outcome.HELD && held > 0) {
      out.append(held).append(" held");
    }
    if (outcome() == Verdict.Outcome.FAILED && notExercised > 0) {
      out.append(out.isEmpty() ? "" : ", ").append(notExercised).append(" not exercised");
    }
    return out.toString();
  }
}
