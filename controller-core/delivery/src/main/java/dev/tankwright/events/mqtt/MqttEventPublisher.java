package dev.tankwright.events.mqtt;

import java.time.Duration;
import java.util.concurrent.TimeUnit;

/** Publishes over MQTT 3.1.1 with QoS 1; one daemon thread does the work. */
public final class MqttEventPublisher implements EventPublisher {
  // beyond a deadline, for the goodbye and for a machine that is busy with something else
  private static final Duration GRACE = Duration.ofSeconds(2);

  private final EventQueue queue;
  private final PublisherWorker worker;
  private final Thread thread;

  private MqttEventPublisher(
      PublisherConfig config, Timing timing, EventQueue queue, LinkFactory links, boolean held) {
    this.queue = queue;
    worker = new PublisherWorker(config, timing, links, queue, held);
    thread = new Thread(worker, "event publisher " + config.topics().device());
    thread.setDaemon(true);
    queue.onNews(worker::wake);
  }

  /** Starts publishing; connecting begins at once, in the background. */
  public static EventPublisher start(PublisherConfig config, Timing timing, EventQueue queue) {
    return start(config, timing, queue, number -> new PahoLink(config, number), false);
  }

  /** Starts as if {@link EventPublisher#hold} had been called: connects, but says nothing yet. */
  public static EventPublisher startHeld(PublisherConfig config, Timing timing, EventQueue queue) {
    return start(config, timing, queue, number -> new PahoLink(config, number), true);
  }

  static EventPublisher start(
      PublisherConfig config, Timing timing, EventQueue queue, LinkFactory links, boolean held) {
    MqttEventPublisher publisher = new MqttEventPublisher(config, timing, queue, links, held);
    publisher.thread.start();
    return publisher;
  }

  @Override
  public void status(DeviceStatus status) {
    worker.status(status);
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
  public String lastError() {
    return worker.lastError();
  }

  @Override
  public PublishReport close(Duration deadline) {
    worker.finishWithin(deadline);
    try {
      if (!worker.awaitEnd(deadline.plus(GRACE).toNanos(), TimeUnit.NANOSECONDS)) {
        thread.interrupt();
      }
    } catch (InterruptedException e) {
      thread.interrupt();
      Thread.currentThread().interrupt();
    }
    queue.onNews(() -> {});
    return new PublishReport(queue.acknowledged(), queue.undelivered(), worker.lastError());
  }
}
