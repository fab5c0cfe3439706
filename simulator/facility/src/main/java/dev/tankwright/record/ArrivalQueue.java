package dev.tankwright.record;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;

/**
 * What the client's callbacks hand over. It needs no bound of its own: a broker delivers no more
 * than it may without an acknowledgement. Thread-safe.
 */
final class ArrivalQueue {
  private static final Arrival NOTHING = new Arrival(null, 0, null);

  private final BlockingQueue<Arrival> queue = new LinkedBlockingQueue<>();

  void put(Arrival arrival) {
    queue.add(arrival);
  }

  /** Ends a wait for the next arrival. */
  void wake() {
    queue.add(NOTHING);
  }

  /**
   * What has come, in order: waits for the first, takes the others that are there already.
   *
   * @param most no more than these
   * @param nanos how long to wait for the first
   * @return empty when the time is over or {@link #wake} was called
   */
  List<Arrival> next(int most, long nanos) throws InterruptedException {
    List<Arrival> batch = new ArrayList<>();
    Arrival first = queue.poll(nanos, TimeUnit.NANOSECONDS);
    if (first != null) {
      batch.add(first);
      queue.drainTo(batch, most - 1);
    }
    batch.removeIf(arrival -> arrival.link() == null);
    return batch;
  }
}
