package dev.tankwright.explore;

import dev.tankwright.controller.board.DeviceProfile;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.function.Consumer;

/**
 * Explores set after set of faulty parts: none, each alone, each two together. Each set is explored
 * by one thread with states of its own, so the results do not depend on the number of threads.
 */
public final class Exploration {
  private final DeviceProfile profile;
  private final Explorer.Limits limits;

  /**
   * Makes an exploration.
   *
   * @param profile a device's limits; times are shortened here
   * @param mostStates at how many states a set is given up, at least 1
   */
  public Exploration(DeviceProfile profile, int mostStates) {
    this(profile, mostStates, false);
  }

  /**
   * As {@link #Exploration(DeviceProfile, int)}.
   *
   * @param toFirst whether a set is left at its first broken rule
   */
  public Exploration(DeviceProfile profile, int mostStates, boolean toFirst) {
    this.profile = ShortTimes.of(profile);
    limits = new Explorer.Limits(mostStates, toFirst);
  }

  /** The profile with the times that are explored. */
  public DeviceProfile shortened() {
    return profile;
  }

  /** Explores one set in this thread. */
  public SetResult explore(Plan plan) {
    return new Explorer(profile, plan, limits).explore();
  }

  /**
   * Explores many sets.
   *
   * @param threads how many at a time, at least 1
   * @param done told each result in the order of the plans, as soon as those before it are there
   * @return the results in the order of the plans
   */
  public List<SetResult> explore(List<Plan> plans, int threads, Consumer<SetResult> done) {
    ExecutorService workers = Executors.newFixedThreadPool(threads, Exploration::worker);
    try {
      List<Future<SetResult>> running = new ArrayList<>();
      for (Plan plan : plans) {
        running.add(workers.submit(() -> explore(plan)));
      }
      return results(running, done);
    } finally {
      workers.shutdownNow();
    }
  }

  private static List<SetResult> results(
      List<Future<SetResult>> running, Consumer<SetResult> done) {
    List<SetResult> results = new ArrayList<>();
    for (Future<SetResult> future : running) {
      try {
        SetResult result = future.get();
        results.add(result);
        done.accept(result);
      } catch (InterruptedException e) {
        Thread.currentThread().interrupt();
        throw new IllegalStateException("the exploration was interrupted", e);
      } catch (ExecutionException e) {
        throw new IllegalStateException("the exploration failed: " + e.getCause(), e.getCause());
      }
    }
    return results;
  }

  private static Thread worker(Runnable work) {
    Thread thread = new Thread(work, "explore");
    thread.setDaemon(true);
    return thread;
  }
}
