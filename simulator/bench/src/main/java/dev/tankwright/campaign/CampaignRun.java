package dev.tankwright.campaign;

import java.io.IOException;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.concurrent.ArrayBlockingQueue;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.IntStream;

/**
 * Runs the cases of a share on several threads. Cases end in any order; each is handed on once, by
 * the thread that called {@link #run}. What a case comes to depends on its number alone, so the
 * results are the same whatever the number of threads.
 */
public final class CampaignRun {
  private static final int QUEUE = 1024;
  private static final long TICK_MILLIS = 100;

  private final Plan plan;
  private final int threads;
  private final AtomicBoolean stopped = new AtomicBoolean();
  private final BlockingQueue<Done> queue = new ArrayBlockingQueue<>(QUEUE);

  /** What a worker hands on: a result, or what went wrong, or that it has ended. */
  private record Done(CaseResult result, CaseException failure) {
    private static final Done END = new Done(null, null);

    boolean isEnd() {
      return result == null && failure == null;
    }
  }

  /** Hears of results. */
  public interface Listener {
    /**
     * A case has ended.
     *
     * @throws IOException when its result cannot be kept: the run ends with this exception
     */
    void ended(CaseResult result) throws IOException;

    /** Called now and then, whether or not cases end. */
    void tick();
  }

  /**
   * Makes a run that has not begun.
   *
   * @param threads how many cases at a time, at least 1
   */
  public CampaignRun(Plan plan, int threads) {
    this.plan = plan;
    this.threads = threads;
  }

  /** Lets no further case begin; those that are running end. From any thread. */
  public void stop() {
    stopped.set(true);
  }

  /**
   * Runs what is left of a share, until all is done or {@link #stop} was called; once.
   *
   * @param done the cases that need not be run again
   * @throws IOException when the listener throws it
   * @throws CaseException when a case cannot be run: a defect, told with the case
   * @throws InterruptedException when the calling thread is interrupted
   */
  public void run(Shard shard, List<CaseResult> done, Listener listener)
      throws IOException, CaseException, InterruptedException {
    Set<Integer> known = new HashSet<>();
    done.forEach(result -> known.add(result.number()));
    int[] open =
        IntStream.range(0, plan.cases())
            .filter(number -> shard.has(number) && !known.contains(number))
            .toArray();
    AtomicInteger next = new AtomicInteger();
    int workers = Math.max(1, Math.min(threads, open.length));
    for (int i = 0; i < workers; i++) {
      Thread worker = new Thread(() -> work(open, next), "case-" + (i + 1));
      worker.setDaemon(true);
      worker.start();
    }
    try {
      collect(workers, listener);
    } finally {
      stop();
      // A worker that waits for room in the queue finds it, sees that it is over, and ends.
      queue.clear();
    }
  }

  private void collect(int workers, Listener listener)
      throws IOException, CaseException, InterruptedException {
    int ended = 0;
    while (ended < workers) {
      Done done = queue.poll(TICK_MILLIS, TimeUnit.MILLISECONDS);
      if (done != null && done.failure() != null) {
        throw done.failure();
      } else if (done != null && done.isEnd()) {
        ended++;
      } else if (done != null) {
        listener.ended(done.result());
      }
      listener.tick();
    }
  }

  private void work(int[] open, AtomicInteger next) {
    int index = next.getAndIncrement();
    while (index < open.length && !stopped.get()) {
      hand(one(open[index]));
      index = next.getAndIncrement();
    }
    hand(Done.END);
  }

  private Done one(int number) {
    try {
      return new Done(plan.run(number), null);
    } catch (RuntimeException | Error e) {
      stop();
      return new Done(null, new CaseException(number, plan.variation(number).cell(), e));
    }
  }

  private void hand(Done done) {
    try {
      queue.put(done);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }
}
