package dev.tankwright.hunt;

import java.util.List;

/**
 * One run of a search. Immutable.
 *
 * @param number its number, from 1
 * @param space where
 * @param shares the point of the space
 * @param reading what came of it
 */
public record Evaluation(int number, Space space, List<Double> shares, Reading reading) {
  /** Keeps its own copy. */
  public Evaluation {
    shares = List.copyOf(shares);
  }

  /** The point. */
  double[] point() {
    return shares.stream().mapToDouble(Double::doubleValue).toArray();
  }
}
