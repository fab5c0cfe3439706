package dev.tankwright.delivery;

import dev.tankwright.events.mqtt.BrokerUri;
import java.io.IOException;
import java.time.Duration;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;

/**
 * An embedded broker that starts in the background and may serve many runs, one after another or
 * side by side. Thread-safe.
 */
public final class BackgroundBroker implements AutoCloseable {
  private static final long CLOSE_SECONDS = 30;

  private final FutureTask<EmbeddedBroker> starting = new FutureTask<>(EmbeddedBroker::start);

  private BackgroundBroker() {}

  /** Begins to start a broker and returns at once. */
  public static BackgroundBroker start() {
    BackgroundBroker broker = new BackgroundBroker();
    Thread thread = new Thread(broker.starting, "broker in background");
    thread.setDaemon(true);
    thread.start();
    return broker;
  }

  /**
   * Waits until the broker listens.
   *
   * @throws IOException if it did not start, or not within the limit
   */
  public BrokerUri await(Duration limit) throws IOException, InterruptedException {
    try {
      return starting.get(limit.toNanos(), TimeUnit.NANOSECONDS).uri();
    } catch (ExecutionException e) {
      throw new IOException(e.getCause().getMessage(), e);
    } catch (TimeoutException e) {
      throw new IOException(
          "the embedded broker was not ready within " + limit.toMillis() + " ms", e);
    }
  }

  /** Stops the broker, waiting for the end of a start under way. */
  @Override
  public void close() {
    try {
      starting.get(CLOSE_SECONDS, TimeUnit.SECONDS).close();
    } catch (ExecutionException | TimeoutException e) {
      // it never ran, so there is nothing to stop
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }
}
