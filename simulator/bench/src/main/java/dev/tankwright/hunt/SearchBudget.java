package dev.tankwright.hunt;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

/** Spends a search's budget and remembers what it has bought. One thread. */
final class SearchBudget {
  private final int budget;
  private final Consumer<SearchBudget> progress;
  private final List<Evaluation> evaluations = new ArrayList<>();
  private Evaluation least;
  private double highest = Double.NEGATIVE_INFINITY;

  /** The budget is spent; ends a search from wherever it is. */
  static final class Spent extends RuntimeException {
    private static final long serialVersionUID = 1L;

    Spent() {
      super("the budget is spent", null, false, false);
    }
  }

  SearchBudget(int budget, Consumer<SearchBudget> progress) {
    this.budget = budget;
    this.progress = progress;
  }

  /**
   * Runs a point.
   *
   * @throws Spent when nothing is left
   */
  Evaluation evaluate(Space space, double[] shares) {
    if (left() == 0) {
      throw new Spent();
    }
    Reading reading = Probe.read(space, shares);
    List<Double> point = Arrays.stream(shares).boxed().toList();
    Evaluation evaluation = new Evaluation(evaluations.size() + 1, space, point, reading);
    evaluations.add(evaluation);
    if (!reading.isVacuous() && (least == null || reading.rank() < least.reading().rank())) {
      least = evaluation;
    }
    if (Double.isFinite(reading.rank())) {
      highest = Math.max(highest, reading.rank());
    }
    progress.accept(this);
    return evaluation;
  }

  /**
   * What an optimiser is to minimise: the margin; for what has none, one unit beyond the margins
   * seen so far, on the side where it belongs. So a run that shows nothing is worse than any that
   * shows something, and every number is finite.
   */
  double objective(Evaluation evaluation) {
    double rank = evaluation.reading().rank();
    if (Double.isFinite(rank)) {
      return rank;
    }
    double top = Double.isFinite(highest) ? highest : 0;
    double bottom =
        least == null || !Double.isFinite(least.reading().rank())
            ? Math.min(0, top)
            : least.reading().rank();
    return rank > 0 ? top + 1 : bottom - 1;
  }

  int left() {
    return budget - evaluations.size();
  }

  int budget() {
    return budget;
  }

  List<Evaluation> evaluations() {
    return List.copyOf(evaluations);
  }

  int spent() {
    return evaluations.size();
  }

  /** The evaluation closest to failing; empty while none has shown anything. */
  Optional<Evaluation> least() {
    return Optional.ofNullable(least);
  }
}
