package dev.tankwright.events.mqtt;

import java.time.Duration;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;

/** Publishes over MQTT 3.1.1 with QoS 1; one daemon thread does the work. */
public final class MqttEventPublisher implements EventPublisher {
  // beyond a deadline, for the goodbye and for a machine that is busy with something else
  private static final Duration GRACE = Duration.ofSeconds(2);

  private final Outstanding outstanding = new Outstanding();
  private final PublisherWorker worker;
  private final Thread thread;
  private final AtomicBoolean closed = new AtomicBoolean();

  private MqttEventPublisher(
      PublisherConfig config, Timing timing, LinkFactory links, boolean held) {
    worker = new PublisherWorker(config, timing, links, outstanding, held);
    thread = new Thread(worker, "event publisher " + config.topics().device());
    thread.setDaemon(true);
  }

  /** Starts publishing; connecting begins at once, in the background. */
  public static EventPublisher start(PublisherConfig config, Timing timing) {
    return start(config, timing, () -> new PahoLink(config), false);
  }

  /** Starts as if {@link EventPublisher#hold} had been called: connects, but says nothing yet. */
  public static EventPublisher startHeld(PublisherConfig config, Timing timing) {
    return start(config, timing, () -> new PahoLink(config), true);
  }

  static EventPublisher start(
      PublisherConfig config, Timing timing, LinkFactory links, boolean held) {
    MqttEventPublisher publisher = new MqttEventPublisher(config, timing, links, held);
    publisher.thread.start();
    return publisher;
  }

  @Override
  public void publish(OutgoingEvent event) {
    if (closed.get()) {
      throw new IllegalStateException(
          "event " + event.id() + " came after close(); publish before closing");
    }
    outstanding.add(event);
    worker.wake();
  }

  @Override
  public void hold() {
    worker.hold(true);
  }

  @Override
  public void resume() {
    worker.hold(false);
  }

  @Override
  public PublishReport close(Duration deadline) {
    closed.set(true);
    worker.finishWithin(deadline);
    try {
      if (!worker.awaitEnd(deadline.plus(GRACE).toNanos(), TimeUnit.NANOSECONDS)) {
        thread.interrupt();
      }
    } catch (InterruptedException e) {
      thread.interrupt();
      Thread.currentThread().interrupt();
    }
    return outstanding.report();
  }
}
