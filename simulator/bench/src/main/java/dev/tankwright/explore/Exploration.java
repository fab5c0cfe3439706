package dev.tankwright.explore;

import dev.tankwright.controller.board.DeviceProfile;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CompletionService;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorCompletionService;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;

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
  public SetResult explore(FaultySet plan) {
    return explore(plan, ProgressListener.NOBODY);
  }

  /**
   * Explores many sets, and hands each result to the onlooker in this thread as soon as it is
   * there.
   *
   * @param plans different sets
   * @param threads how many at a time, at least 1
   * @param onlooker told how far it has come
   * @return the results in the order of the plans
   */
  public List<SetResult> explore(List<FaultySet> plans, int threads, ProgressListener onlooker) {
    ExecutorService workers = Executors.newFixedThreadPool(threads, Exploration::worker);
    try {
      CompletionService<Done> running = new ExecutorCompletionService<>(workers);
      plans.forEach(plan -> running.submit(() -> new Done(plan, explore(plan, onlooker))));
      Map<FaultySet, SetResult> results = new HashMap<>();
      while (results.size() < plans.size()) {
        Done done = next(running);
        results.put(done.plan, done.result);
        onlooker.done(done.plan, done.result);
      }
      return plans.stream().map(results::get).toList();
    } finally {
      workers.shutdownNow();
    }
  }

  private SetResult explore(FaultySet plan, ProgressListener onlooker) {
    onlooker.begins(plan);
    return new Explorer(profile, plan, limits, onlooker).explore();
  }

  private static Done next(CompletionService<Done> running) {
    try {
      return running.take().get();
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException("the exploration was interrupted", e);
    } catch (ExecutionException e) {
      throw new IllegalStateException("the exploration failed: " + e.getCause(), e.getCause());
    }
  }

  /** A set that was explored. */
  private record Done(FaultySet plan, SetResult result) {}

  private static Thread worker(Runnable work) {
    Thread thread = new Thread(work, "explore");
    thread.setDaemon(true);
    return thread;
  }
}
