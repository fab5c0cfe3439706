package dev.tankwright.fleet;

import java.time.Duration;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.ThreadFactory;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Consumer;

/**
 * The threads of a fleet: a few that simulate in parallel, slice by slice, and some that wait while
 * devices disconnect. Controlled by one thread.
 */
final class WorkerThreads implements AutoCloseable {
  private static final int FAREWELLS = 64;

  private final int threads;
  private final ExecutorService simulating;
  private final ExecutorService leaving;
  private final Set<FleetDevice> left = new HashSet<>();
  private final List<Future<?>> farewells = new ArrayList<>();

  WorkerThreads(int threads) {
    this.threads = threads;
    simulating = Executors.newFixedThreadPool(threads, daemons("fleet"));
    leaving = Executors.newFixedThreadPool(FAREWELLS, daemons("fleet goodbye"));
  }

  private static ThreadFactory daemons(String name) {
    return task -> {
      Thread thread = new Thread(task, name);
      thread.setDaemon(true);
      return thread;
    };
  }

  /** Does something for every device, and returns when it is done for all. */
  void forEach(List<FleetDevice> devices, Consumer<FleetDevice> action)
      throws InterruptedException {
    AtomicInteger next = new AtomicInteger();
    Callable<Void> hand =
        () -> {
          for (int i = next.getAndIncrement(); i < devices.size(); i = next.getAndIncrement()) {
            action.accept(devices.get(i));
          }
          return null;
        };
    List<Callable<Void>> hands = new ArrayList<>();
    for (int i = 0; i < threads; i++) {
      hands.add(hand);
    }
    for (Future<Void> done : simulating.invokeAll(hands)) {
      await(done);
    }
  }

  /** Lets those say goodbye who have nothing more to send; does not wait for it. */
  void goodbye(List<FleetDevice> devices, Duration limit) {
    for (FleetDevice device : devices) {
      if (device.wantsGoodbye()) {
        leave(device, limit);
      }
    }
  }

  /** Lets all others say goodbye, and returns when everybody has. */
  void farewell(List<FleetDevice> devices, Duration limit) throws InterruptedException {
    devices.forEach(device -> leave(device, limit));
    for (Future<?> done : farewells) {
      await(done);
    }
  }

  private void leave(FleetDevice device, Duration limit) {
    if (left.add(device)) {
      farewells.add(leaving.submit(() -> device.disconnect(limit)));
    }
  }

  private static void await(Future<?> done) throws InterruptedException {
    try {
      done.get();
    } catch (ExecutionException e) {
      throw new IllegalStateException("a device of the fleet failed: " + e.getCause(), e);
    }
  }

  @Override
  public void close() {
    simulating.shutdownNow();
    leaving.shutdownNow();
  }
}
