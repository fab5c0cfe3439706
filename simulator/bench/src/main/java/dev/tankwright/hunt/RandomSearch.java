package dev.tankwright.hunt;

import java.util.List;
import java.util.SplittableRandom;

/** Draws points evenly from all spaces. */
final class RandomSearch {
  private RandomSearch() {}

  /** Searches until the budget is spent. */
  static void search(List<Space> spaces, SearchBudget ledger, SplittableRandom random) {
    while (ledger.left() > 0) {
      Space space = spaces.get(random.nextInt(spaces.size()));
      ledger.evaluate(space, point(space, random));
    }
  }

  /** A point drawn evenly. */
  static double[] point(Space space, SplittableRandom random) {
    return random.doubles(space.coordinates().size()).toArray();
  }
}
