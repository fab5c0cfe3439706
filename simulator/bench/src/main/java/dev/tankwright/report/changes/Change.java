package dev.tankwright.report.changes;

import dev.tankwright.report.results.JudgedLine;
import dev.tankwright.scenario.Verdict;
import java.util.Optional;

/**
 * What became of one line of an earlier release's results. Immutable.
 *
 * @param kind what has happened
 * @param before the line then; empty when it is new
 * @param after the line now; empty when it is missing
 */
public record Change(Kind kind, Optional<JudgedLine> before, Optional<JudgedLine> after) {
  /** What can happen to a line, in the order in which it is shown. */
  public enum Kind {
    /** It fails, and did not: it held, nothing put it to the test, or it was not there. */
    NEWLY_FAILING("newly failing"),
    /** Nothing puts it to the test any more. */
    NO_LONGER_EXERCISED("no longer exercised"),
    /** It is not there any more. */
    MISSING("missing"),
    /** It failed and fails. */
    STILL_FAILING("still failing"),
    /** It holds with less to spare than before. */
    MARGIN_LOST("margin lost"),
    /** It holds, and did not. */
    NEWLY_HOLDING("newly holding"),
    /** It was not there before. */
    NEW("new"),
    /** It holds with more to spare than before. */
    MARGIN_GAINED("margin gained"),
    /** It holds, but its margin has another unit now, or none. */
    UNIT_CHANGED("margin unit changed"),
    /** It is as it was, within the tolerance. */
    SAME("unchanged");

    private final String words;

    Kind(String words) {
      this.words = words;
    }

    /** The kind as people read it. */
    public String words() {
      return words;
    }

    /** True for what fails a build: something was shown to hold and is not any more. */
    public boolean isRegression() {
      return this == NEWLY_FAILING || this == NO_LONGER_EXERCISED;
    }

    /** True for what fails a build that is strict: less is shown, or with less to spare. */
    public boolean isLoss() {
      return isRegression() || this == MISSING || this == MARGIN_LOST;
    }
  }

  /** The line now, or as it was. */
  JudgedLine line() {
    return after.or(() -> before).orElseThrow();
  }

  /**
   * Judges one line that is in at least one of two results.
   *
   * @param tolerance share of the earlier margin by which it may differ, 0 or more
   */
  static Change of(Optional<JudgedLine> before, Optional<JudgedLine> after, double tolerance) {
    return new Change(kind(before, after, tolerance), before, after);
  }

  private static Kind kind(
      Optional<JudgedLine> before, Optional<JudgedLine> after, double tolerance) {
    if (after.isEmpty()) {
      return Kind.MISSING;
    }
    Verdict.Outcome now = after.get().outcome();
    Verdict.Outcome then = before.map(JudgedLine::outcome).orElse(null);
    if (now == Verdict.Outcome.FAILED) {
      return then == Verdict.Outcome.FAILED ? Kind.STILL_FAILING : Kind.NEWLY_FAILING;
    }
    if (then == null) {
      return Kind.NEW;
    }
    if (now == Verdict.Outcome.NOT_EXERCISED) {
      return then == now ? Kind.SAME : Kind.NO_LONGER_EXERCISED;
    }
    return then == now ? margins(before.get(), after.get(), tolerance) : Kind.NEWLY_HOLDING;
  }

  private static Kind margins(JudgedLine before, JudgedLine after, double tolerance) {
    if (before.margin().isEmpty() && after.margin().isEmpty()) {
      return Kind.SAME;
    }
    double then = before.margin().orElse(Double.NaN);
    double now = after.margin().orElse(Double.NaN);
    if (Double.isNaN(then) || Double.isNaN(now) || !before.unit().equals(after.unit())) {
      return Kind.UNIT_CHANGED;
    }
    boolean within = Double.isFinite(then) && Math.abs(now - then) <= Math.abs(then) * tolerance;
    if (then == now || within) {
      return Kind.SAME;
    }
    return now < then ? Kind.MARGIN_LOST : Kind.MARGIN_GAINED;
  }
}
