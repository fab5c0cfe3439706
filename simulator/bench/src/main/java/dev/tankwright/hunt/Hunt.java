package dev.tankwright.hunt;

import java.util.List;
import java.util.SplittableRandom;
import java.util.function.BiConsumer;

/**
 * Searches spaces for the scenario that brings a requirement closest to failing. The same spaces,
 * method, budget and seed give the same result. Immutable.
 *
 * @param requirement name of the requirement that the spaces' scenarios ask
 * @param spaces where to search; at least one
 * @param method how
 * @param budget how many runs, at least 1
 * @param seed seed of the search; the scenarios keep their own
 */
public record Hunt(String requirement, List<Space> spaces, Method method, int budget, long seed) {
  /** Checks its numbers and keeps its own copy. */
  public Hunt {
    spaces = List.copyOf(spaces);
    if (spaces.isEmpty() || budget < 1) {
      throw new IllegalArgumentException("a search needs a space and a budget of at least 1");
    }
  }

  /**
   * Searches until the budget is spent.
   *
   * @param progress told after every run how many there were, and the least margin so far, NaN
   *     while there is none
   */
  public HuntResult run(BiConsumer<Integer, Double> progress) {
    SearchBudget ledger =
        new SearchBudget(
            budget,
            spent ->
                progress.accept(
                    spent.spent(), spent.least().map(e -> e.reading().rank()).orElse(Double.NaN)));
    SplittableRandom random = new SplittableRandom(seed);
    try {
      switch (method) {
        case CMA_ES -> CmaEsSearch.search(spaces, ledger, random);
        case RANDOM -> RandomSearch.search(spaces, ledger, random);
      }
    } catch (SearchBudget.Spent e) {
      // As it should be: an optimiser ends wherever the budget does.
    }
    return new HuntResult(requirement, method, seed, ledger.evaluations(), ledger.least());
  }
}
