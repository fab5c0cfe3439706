package dev.tankwright.cli;

import dev.tankwright.explore.Onlooker;
import dev.tankwright.explore.Plan;
import dev.tankwright.explore.SetResult;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.function.LongSupplier;

/**
 * Tells how far an exploration has come: on a terminal one line with the sets that are under way.
 * Any thread.
 */
final class ExplorationProgress implements Onlooker {
  private static final long NANOS_PER_SECOND = 1_000_000_000L;
  private static final long BETWEEN = NANOS_PER_SECOND / 4;

  private final Progress line;
  private final LongSupplier nanoseconds;
  private final int all;
  private final Results results;
  private final Map<Plan, Long> began = new LinkedHashMap<>();
  private final Map<Plan, String> underWay = new LinkedHashMap<>();
  private long last;
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
    last = nanoseconds.getAsLong();
  }

  @Override
  public synchronized void begins(Plan plan) {
    began.put(plan, nanoseconds.getAsLong());
    underWay.put(plan, plan.text());
    line.say(text());
  }

  @Override
  public synchronized void looked(Plan plan, int looked, int reached) {
    underWay.put(
        plan,
        String.format(Locale.ROOT, "%s, %,d of %,d states so far", plan.text(), looked, reached));
    long now = nanoseconds.getAsLong();
    if (now - last >= BETWEEN) {
      last = now;
      line.say(text());
    }
  }

  @Override
  public synchronized void done(Plan plan, SetResult result) {
    done++;
    underWay.remove(plan);
    line.clear();
    long seconds = (nanoseconds.getAsLong() - began.get(plan)) / NANOS_PER_SECOND;
    results.take(result, seconds);
    if (done < all) {
      line.say(text());
    }
  }

  /** For example {@code explore: 3 of 93 sets done; counter, 1,024 of 20,480 states so far}. */
  private String text() {
    return "explore: "
        + done
        + " of "
        + all
        + " sets done; "
        + String.join("; ", underWay.values());
  }
}
