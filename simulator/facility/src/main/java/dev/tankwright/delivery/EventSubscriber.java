package dev.tankwright.delivery;

import dev.tankwright.events.mqtt.Backoff;
import dev.tankwright.events.mqtt.BrokerAccess;
import dev.tankwright.events.mqtt.DeviceTopics;
import dev.tankwright.events.mqtt.PlainErrors;
import dev.tankwright.events.mqtt.Timing;
import java.time.Duration;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import org.eclipse.paho.client.mqttv3.MqttException;

/**
 * Subscribes to one device's events and status with QoS 1 and keeps what arrives.
 *
 * <p>Its session is clean, so what is published while it is away never reaches it: its {@link
 * Presence} is told when it is there, and a publisher that wants to be heard holds back meanwhile.
 * It comes back by itself until closed. Thread-safe.
 */
public final class EventSubscriber implements AutoCloseable {
  private static final long CLOSE_SECONDS = 2;

  /** Hears whether the subscription stands; called on the subscriber's thread. */
  public interface Presence {
    /** From here on nothing is missed. */
    void present();

    /** From here on everything is missed. */
    void absent();
  }

  private final BrokerAccess broker;
  private final DeviceTopics topics;
  private final String clientId;
  private final Duration connectTimeout;
  private final Timing timing;
  private final Presence presence;
  private final Inbox inbox;
  private final Thread thread;
  private final CountDownLatch closing = new CountDownLatch(1);
  private volatile String lastError;

  private EventSubscriber(
      BrokerAccess broker,
      DeviceTopics topics,
      String clientId,
      Duration connectTimeout,
      Timing timing,
      Presence presence) {
    this.broker = broker;
    this.topics = topics;
    this.clientId = clientId;
    this.connectTimeout = connectTimeout;
    this.timing = timing;
    this.presence = presence;
    this.inbox = new Inbox(topics, timing.nanoTime());
    this.thread = new Thread(this::run, "event subscriber " + topics.device());
    thread.setDaemon(true);
  }

  /** Begins to connect and returns at once. */
  public static EventSubscriber start(
      BrokerAccess broker,
      DeviceTopics topics,
      String clientId,
      Duration connectTimeout,
      Timing timing,
      Presence presence) {
    EventSubscriber subscriber =
        new EventSubscriber(broker, topics, clientId, connectTimeout, timing, presence);
    subscriber.thread.start();
    return subscriber;
  }

  /** First arrivals, in order. */
  public List<ReceivedEvent> received() {
    return inbox.received();
  }

  /** Ids that came more than once. */
  public List<String> doubled() {
    return inbox.doubled();
  }

  /** How many messages on the events topic carried no CloudEvents id. */
  public int unreadable() {
    return inbox.unreadable();
  }

  /** The payload of the last status message, if any came. */
  public Optional<String> lastStatus() {
    return inbox.status();
  }

  /** The last thing that went wrong, in plain words, or null. */
  public String lastError() {
    return lastError;
  }

  /**
   * Waits until all these ids have come, but no longer than {@code idle} since the last of them and
   * {@code overall} in total.
   *
   * @return the ids still missing
   */
  public List<String> awaitAll(Collection<String> ids, Duration idle, Duration overall)
      throws InterruptedException {
    return inbox.awaitAll(ids, idle, overall);
  }

  /** Leaves the broker; what has arrived can still be read. Bounded. */
  @Override
  public void close() {
    closing.countDown();
    thread.interrupt();
    try {
      thread.join(TimeUnit.SECONDS.toMillis(CLOSE_SECONDS));
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }

  private void run() {
    int failures = 0;
    try {
      while (closing.getCount() > 0) {
        failures = attempt() ? 1 : failures + 1;
        Duration pause = Backoff.STANDARD.after(failures, timing.random());
        if (closing.await(pause.toNanos(), TimeUnit.NANOSECONDS)) {
          return;
        }
      }
    } catch (InterruptedException e) {
      // only close() interrupts, so this is the end that was asked for
    }
  }

  /** One connection from start to end; returns whether the subscription ever stood. */
  private boolean attempt() throws InterruptedException {
    Subscription subscription = null;
    boolean stood = false;
    try {
      subscription = new Subscription(broker, clientId);
      subscription.begin(topics, inbox, connectTimeout);
      stood = true;
      presence.present();
      subscription.awaitLoss();
      lastError = "the subscriber's connection to " + broker + " was lost; see the broker's log";
    } catch (MqttException e) {
      lastError = PlainErrors.of(broker.uri(), e);
    } finally {
      if (stood) {
        presence.absent();
      }
      if (subscription != null) {
        subscription.end();
      }
    }
    return stood;
  }
}
