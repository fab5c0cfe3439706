package dev.tankwright.cli;

import dev.tankwright.explore.FaultySet;
import dev.tankwright.explore.ProgressListener;
import dev.tankwright.explore.SetResult;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.function.LongSupplier;

/** Shows the progress of an exploration in one line of a terminal. Any thread. */
final class ExplorationProgress implements ProgressListener {
  private static final long NANOS_PER_SECOND = 1_000_000_000L;
  private static final long BETWEEN = NANOS_PER_SECOND / 4;

  private final Progress line;
  private final PacedLine paced;
  private final LongSupplier nanoseconds;
  private final int all;
  private final Results results;
  private final Map<FaultySet, Long> began = new HashMap<>();
  private final Map<FaultySet, Seen> underWay = new HashMap<>();
  private int done;

  /** Takes each result as it comes. */
  @FunctionalInterface
  interface Results {
    /**
     * A set is at its end.
     *
     * @param seconds how long it took
     */
    void take(SetResult result, long seconds);
  }

  /**
   * Begins to count.
   *
   * @param line the line of a terminal; silent where there is none
   * @param all how many sets are explored
   * @param results what is done with a result, while no progress is shown
   */
  ExplorationProgress(Progress line, LongSupplier nanoseconds, int all, Results results) {
    this.line = line;
    this.nanoseconds = nanoseconds;
    this.all = all;
    this.results = results;
    paced = new PacedLine(line, null, nanoseconds, BETWEEN);
  }

  @Override
  public synchronized void begins(FaultySet plan) {
    began.put(plan, nanoseconds.getAsLong());
    underWay.put(plan, new Seen(0, 0));
    line.say(text());
  }

  @Override
  public synchronized void looked(FaultySet plan, int looked, int reached) {
    underWay.put(plan, new Seen(looked, reached));
    if (paced.due().isPresent()) {
      paced.say(text());
    }
  }

  @Override
  public synchronized void done(FaultySet plan, SetResult result) {
    done++;
    underWay.remove(plan);
    line.clear();
    long seconds = (nanoseconds.getAsLong() - began.get(plan)) / NANOS_PER_SECOND;
    results.take(result, seconds);
    if (done < all) {
      line.say(text());
    }
  }

  /** Short enough for a narrow terminal, which would break a longer line. */
  private String text() {
    int looked = underWay.values().stream().mapToInt(Seen::looked).sum();
    int reached = underWay.values().stream().mapToInt(Seen::reached).sum();
    String known = String.format(Locale.ROOT, "%,d of %,d known states", looked, reached);
    return "explore: " + done + " of " + all + " sets done; visited " + known;
  }

  /** How far a set has come. */
  private record Seen(int looked, int reached) {}
}
