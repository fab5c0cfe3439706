package dev.tankwright.campaign;

import java.util.List;
import java.util.SplittableRandom;

/**
 * The moments of injection in one phase, counted from its being entered. Immutable.
 *
 * @param grid moments that are given; empty when they are drawn
 * @param drawn how many are drawn, each from its own part of the stay, all parts of one length; 0
 *     when they are given
 */
public record Moments(List<Moment> grid, int drawn) {
  private static final double STEP_MILLIS = 10;

  /** Keeps its own copy. */
  public Moments {
    grid = List.copyOf(grid);
  }

  /** Only the moment in which the phase is entered. */
  static final Moments ENTRY = new Moments(List.of(new Moment(0, false)), 0);

  /**
   * One moment.
   *
   * @param value ms, or a share of the phase's stay in the undisturbed scenario
   * @param isShare which of the two
   */
  public record Moment(double value, boolean isShare) {
    double millis(long stayMillis) {
      return isShare ? value * stayMillis : value;
    }
  }

  /** How many there are. */
  public int count() {
    return drawn > 0 ? drawn : grid.size();
  }

  /** Moments within the stay that lie farthest from each other, for a search. */
  static Span whole(long stayMillis) {
    return new Span(0, Math.max(0, stayMillis - STEP_MILLIS));
  }

  /**
   * One of the moments, ms.
   *
   * @param index which, from 0
   * @param stayMillis how long the phase lasts in the undisturbed scenario
   * @param random where it is drawn from
   */
  double millis(int index, long stayMillis, SplittableRandom random) {
    if (drawn == 0) {
      return grid.get(index).millis(stayMillis);
    }
    double share = (index + random.nextDouble()) / drawn;
    return whole(stayMillis).at(share);
  }
}
