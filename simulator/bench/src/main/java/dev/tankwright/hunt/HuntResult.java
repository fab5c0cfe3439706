package dev.tankwright.hunt;

import java.util.List;
import java.util.Optional;

/**
 * What a search has found. Immutable.
 *
 * @param requirement name of the requirement
 * @param method how it was searched
 * @param seed seed of the search
 * @param evaluations every run, in order
 * @param least the one closest to failing; empty when no run put the requirement to the test
 */
public record HuntResult(
    String requirement,
    Method method,
    long seed,
    List<Evaluation> evaluations,
    Optional<Evaluation> least) {
  /** Keeps its own copy. */
  public HuntResult {
    evaluations = List.copyOf(evaluations);
  }

  /** How many runs showed nothing. */
  public long vacuous() {
    return evaluations.stream().filter(one -> one.reading().isVacuous()).count();
  }

  /** Unit of the margins, empty for shares or when there is none. */
  public String unit() {
    return least.map(one -> one.reading().unit()).orElse("");
  }
}
