package dev.tankwright.delivery;

import dev.tankwright.events.mqtt.BrokerAccess;
import dev.tankwright.events.mqtt.DeviceStatus;
import dev.tankwright.events.mqtt.DeviceTopics;
import dev.tankwright.events.mqtt.EventPublisher;
import dev.tankwright.events.mqtt.MqttEventPublisher;
import dev.tankwright.events.mqtt.PublishReport;
import dev.tankwright.events.mqtt.PublisherConfig;
import java.time.Duration;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * One run's publisher and subscriber at one broker; the publisher sends only while the subscriber
 * is connected.
 */
final class RunConnection {
  private final BrokerEndpoints places;
  private final DeviceTopics topics;
  private final DeliverySettings settings;
  private final EventPublisher publisher;
  private final EventSubscriber subscriber;

  private RunConnection(
      BrokerEndpoints places,
      DeviceTopics topics,
      DeliverySettings settings,
      EventPublisher publisher,
      EventSubscriber subscriber) {
    this.places = places;
    this.topics = topics;
    this.settings = settings;
    this.publisher = publisher;
    this.subscriber = subscriber;
  }

  /** Begins to connect both and returns at once. */
  static RunConnection connect(
      BrokerEndpoints places, DeviceTopics topics, DeliverySettings settings, EventStorage kept) {
    // an id of this run alone: another bench run with the same device must not throw it out
    String run = Long.toHexString(settings.timing().random().nextLong());
    String passing = "tankwright-" + topics.device() + "-" + run;
    EventPublisher publisher =
        MqttEventPublisher.startHeld(
            config(places.publisher(), topics, settings, passing), settings.timing(), kept.queue());
    EventSubscriber subscriber =
        EventSubscriber.start(
            places.reader(),
            topics,
            passing + "-reader",
            settings.connectTimeout(),
            settings.timing(),
            new Gate(publisher));
    return new RunConnection(places, topics, settings, publisher, subscriber);
  }

  private static PublisherConfig config(
      BrokerAccess access, DeviceTopics topics, DeliverySettings settings, String passing) {
    PublisherConfig stable =
        PublisherConfig.forDevice(access, topics.device(), settings.session())
            .withTimeouts(settings.connectTimeout(), settings.ackTimeout());
    return settings.lasting() ? stable : stable.withPassingClient(passing);
  }

  void status(DeviceStatus status) {
    publisher.status(status);
  }

  /**
   * Drains, waits for what was acknowledged, disconnects.
   *
   * @param sent the ids of all events published here, in order
   * @param end when to give up, on the settings' clock
   */
  DeliveryReport finish(List<String> sent, long end) throws InterruptedException {
    try {
      PublishReport published = publisher.close(left(end));
      Set<String> acknowledged = new HashSet<>(sent);
      published.undelivered().forEach(acknowledged::remove);
      subscriber.awaitAll(acknowledged, settings.idleTimeout(), left(end));
      return report(sent, published);
    } finally {
      subscriber.close();
    }
  }

  int receivedSoFar() {
    return subscriber.received().size();
  }

  /** Disconnects without having been used. */
  void abandon() {
    publisher.close(Duration.ZERO);
    subscriber.close();
  }

  private DeliveryReport report(List<String> sent, PublishReport published) {
    Set<String> ours = new HashSet<>(sent);
    List<ReceivedEvent> all = subscriber.received();
    List<ReceivedEvent> received = all.stream().filter(e -> ours.contains(e.id())).toList();
    Set<String> missing = new HashSet<>(ours);
    received.forEach(event -> missing.remove(event.id()));
    List<String> undelivered = sent.stream().filter(missing::contains).toList();
    return new DeliveryReport(
        sent.size(),
        received,
        undelivered,
        subscriber.doubled().stream().filter(ours::contains).toList(),
        all.size() - received.size() + subscriber.unreadable(),
        undelivered.isEmpty() ? null : why(published, sent.size(), received.size()));
  }

  private String why(PublishReport published, int sent, int received) {
    String counts = "%d of %d events reached the subscriber: ".formatted(received, sent);
    if (!published.undelivered().isEmpty() && published.lastError() != null) {
      return counts + published.lastError();
    }
    if (published.acknowledged() == 0 && subscriber.lastError() != null) {
      return counts + subscriber.lastError();
    }
    return counts
        + "the broker at %s acknowledged %d; allow this client to publish to and read from %s there"
            .formatted(places.publisher(), published.acknowledged(), topics.events());
  }

  private Duration left(long end) {
    long nanos = end - settings.timing().nanoTime().getAsLong();
    return Duration.ofNanos(Math.max(0, nanos));
  }

  /** Lets the publisher speak while the subscriber listens. */
  private record Gate(EventPublisher publisher) implements EventSubscriber.Presence {
    @Override
    public void present() {
      publisher.resume();
    }

    @Override
    public void absent() {
      publisher.hold();
    }
  }
}
