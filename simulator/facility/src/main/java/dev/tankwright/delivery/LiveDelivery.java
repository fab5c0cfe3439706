package dev.tankwright.delivery;

import dev.tankwright.events.mqtt.DeviceStatus;
import dev.tankwright.events.mqtt.DeviceTopics;
import dev.tankwright.events.mqtt.OutgoingEvent;
import java.io.IOException;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;

/** A run's delivery over a real broker; a thread of its own waits for the broker. */
final class LiveDelivery implements RunDelivery {
  private static final Duration START_LIMIT = Duration.ofSeconds(30);

  /** Waits for a broker and tells where it is. */
  @FunctionalInterface
  interface BrokerSource {
    BrokerEndpoints await(Duration limit) throws IOException, InterruptedException;
  }

  private final DeviceTopics topics;
  private final DeliverySettings settings;
  private final BrokerSource source;
  private final Runnable afterwards;
  private final CountDownLatch started = new CountDownLatch(1);
  private final CountDownLatch finished = new CountDownLatch(1);
  private final EventStorage kept;
  private final List<String> sent = new ArrayList<>();
  private RunConnection wire;
  private DeviceStatus status = DeviceStatus.UNKNOWN;
  private String startFailure = "the broker was not ready before the end of the run";
  private String refused;
  private boolean closed;
  private boolean gaveUp;
  private volatile DeliveryReport report;

  private LiveDelivery(
      DeviceTopics topics, DeliverySettings settings, BrokerSource source, Runnable afterwards) {
    this.topics = topics;
    this.settings = settings;
    this.source = source;
    this.afterwards = afterwards;
    this.kept = EventStorage.of(settings);
  }

  static LiveDelivery begin(
      String device, DeliverySettings settings, BrokerSource source, Runnable afterwards) {
    LiveDelivery delivery =
        new LiveDelivery(new DeviceTopics(device), settings, source, afterwards);
    Thread starter = new Thread(delivery::start, "delivery start " + device);
    starter.setDaemon(true);
    starter.start();
    return delivery;
  }

  @Override
  public synchronized void offer(OutgoingEvent event, byte[] memory) {
    if (closed) {
      throw new IllegalStateException(
          "event " + event.id() + " came after finish(); offer before finishing");
    }
    sent.add(event.id());
    if (!kept.add(event, memory)) {
      refused = kept.trouble();
    }
  }

  @Override
  public synchronized void status(DeviceStatus now) {
    status = now;
    if (wire != null) {
      wire.status(now);
    }
  }

  @Override
  public int receivedSoFar() {
    RunConnection ours = wire();
    return ours == null ? 0 : ours.receivedSoFar();
  }

  @Override
  public DeliveryReport finish(Duration limit) {
    try {
      if (beginsFinishing()) {
        report = drain(settings.timing().nanoTime().getAsLong() + limit.toNanos());
        kept.close();
        finished.countDown();
        afterwards.run();
      }
      finished.await();
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      return nothingReceived("the wait for delivery was interrupted");
    }
    return report;
  }

  private synchronized boolean beginsFinishing() {
    boolean first = !closed;
    closed = true;
    return first;
  }

  private DeliveryReport drain(long end) throws InterruptedException {
    long left = end - settings.timing().nanoTime().getAsLong();
    if (!started.await(left, TimeUnit.NANOSECONDS)) {
      giveUpUnlessTakenUp();
    }
    RunConnection ours = wire();
    DeliveryReport drained =
        ours == null ? nothingReceived(failure()) : ours.finish(List.copyOf(sent), end);
    return withRefusals(drained);
  }

  private synchronized DeliveryReport withRefusals(DeliveryReport drained) {
    String why = refused != null ? refused : kept.trouble();
    if (drained.failure() == null || why == null) {
      return drained;
    }
    return new DeliveryReport(
        drained.sent(),
        drained.received(),
        drained.undelivered(),
        drained.doubled(),
        drained.foreign(),
        drained.failure() + "; " + why);
  }

  private synchronized void giveUpUnlessTakenUp() {
    gaveUp = wire == null;
  }

  private synchronized DeliveryReport nothingReceived(String why) {
    return new DeliveryReport(
        sent.size(), List.of(), sent, List.of(), 0, sent.isEmpty() ? null : why);
  }

  private synchronized RunConnection wire() {
    return wire;
  }

  private synchronized String failure() {
    return startFailure;
  }

  private void start() {
    try {
      connect(source.await(START_LIMIT));
    } catch (IOException e) {
      fail(e.getMessage());
    } catch (InterruptedException e) {
      fail("the wait for the broker was interrupted");
    } finally {
      started.countDown();
    }
  }

  private synchronized void fail(String words) {
    startFailure = words;
  }

  private void connect(BrokerEndpoints places) {
    RunConnection made = RunConnection.connect(places, topics, settings, kept);
    if (!takeUp(made)) {
      made.abandon();
    }
  }

  /** From here on the wire is this run's, unless the run has ended meanwhile. */
  private synchronized boolean takeUp(RunConnection made) {
    if (!gaveUp) {
      wire = made;
      made.status(status);
    }
    return !gaveUp;
  }
}
