package dev.tankwright.delivery;

import static org.awaitility.Awaitility.await;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.tankwright.events.mqtt.BrokerAccess;
import dev.tankwright.events.mqtt.BrokerUri;
import dev.tankwright.events.mqtt.DeviceStatus;
import dev.tankwright.events.mqtt.DeviceTopics;
import dev.tankwright.events.mqtt.EventPublisher;
import dev.tankwright.events.mqtt.MemoryQueue;
import dev.tankwright.events.mqtt.MqttEventPublisher;
import dev.tankwright.events.mqtt.PublisherConfig;
import dev.tankwright.events.mqtt.StatusMessage;
import java.io.IOException;
import java.net.InetAddress;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.CountDownLatch;
import java.util.stream.Collectors;
import org.eclipse.paho.client.mqttv3.MqttClient;
import org.eclipse.paho.client.mqttv3.MqttConnectOptions;
import org.eclipse.paho.client.mqttv3.MqttException;
import org.eclipse.paho.client.mqttv3.persist.MemoryPersistence;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

@Timeout(120)
class EmbeddedBrokerTest {
  private static final Duration LIMIT = Duration.ofSeconds(30);
  private static final DeviceTopics TOPICS = new DeviceTopics("bath-1");
  private static final StatusMessage MESSAGE = new StatusMessage(7, 1);
  private static final Optional<String> ONLINE =
      Optional.of(new String(MESSAGE.online(DeviceStatus.UNKNOWN), StandardCharsets.UTF_8));
  private static final Optional<String> OFFLINE =
      Optional.of(new String(MESSAGE.lastWill(), StandardCharsets.UTF_8));

  /** Subscribes and returns when the subscription stands. */
  private static EventSubscriber subscriber(BrokerUri broker, String clientId) {
    CountDownLatch stands = new CountDownLatch(1);
    EventSubscriber.Presence presence =
        new EventSubscriber.Presence() {
          @Override
          public void present() {
            stands.countDown();
          }

          @Override
          public void absent() {}
        };
    EventSubscriber subscriber =
        EventSubscriber.start(
            BrokerAccess.of(broker),
            TOPICS,
            clientId,
            Duration.ofSeconds(20),
            Events.TIMING,
            presence);
    await().atMost(LIMIT).until(() -> stands.getCount() == 0);
    return subscriber;
  }

  private static void awaitStatus(EventSubscriber subscriber, Optional<String> expected) {
    await().atMost(LIMIT).until(subscriber::lastStatus, expected::equals);
  }

  /** The retained last will of MQTT 3.1.1, 3.1.2.5 and 3.1.2.7. */
  @Test
  void keepsTheLastWillOfAClientThatWasCutOff() throws IOException {
    try (EmbeddedBroker broker = EmbeddedBroker.start();
        CuttableProxy proxy = new CuttableProxy(broker.uri());
        EventSubscriber watcher = subscriber(broker.uri(), "watcher")) {
      PublisherConfig config = PublisherConfig.forDevice(BrokerAccess.of(proxy.uri()), "bath-1", 7);
      EventPublisher publisher = MqttEventPublisher.start(config, Events.TIMING, new MemoryQueue());
      awaitStatus(watcher, ONLINE);
      proxy.vanish();
      awaitStatus(watcher, OFFLINE);
      try (EventSubscriber late = subscriber(broker.uri(), "late")) {
        awaitStatus(late, OFFLINE);
      }
      publisher.close(Duration.ZERO);
    }
  }

  @Test
  void keepsWhatAnAbsentClientWithASessionMissed() throws Exception {
    MqttConnectOptions options = new MqttConnectOptions();
    options.setCleanSession(false);
    options.setMqttVersion(MqttConnectOptions.MQTT_VERSION_3_1_1);
    Inbox inbox = new Inbox(TOPICS, System::nanoTime);
    try (EmbeddedBroker broker = EmbeddedBroker.start()) {
      try (MqttClient reader = client(broker, "reader")) {
        reader.connect(options);
        reader.subscribe(TOPICS.events(), 1);
        reader.disconnect();
      }
      try (MqttClient writer = client(broker, "writer")) {
        writer.connect();
        for (String id : List.of("1", "2", "3")) {
          writer.publish(TOPICS.events(), Events.event(id).payload(), 1, false);
        }
        writer.disconnect();
      }
      try (MqttClient reader = client(broker, "reader")) {
        reader.setCallback(new Arrivals(inbox, new CountDownLatch(1)));
        reader.connect(options);
        assertEquals(List.of(), inbox.awaitAll(List.of("1", "2", "3"), LIMIT, LIMIT));
        assertEquals(List.of("1", "2", "3"), Events.idsOf(inbox.received()));
        reader.disconnect();
      }
    }
  }

  private static MqttClient client(EmbeddedBroker broker, String id) throws MqttException {
    return new MqttClient(broker.uri().toString(), id, new MemoryPersistence());
  }

  @Test
  void listensOnTheLoopbackAddressOnlyAndLeavesNoThread() throws IOException {
    Set<Thread> before = Thread.getAllStackTraces().keySet();
    EmbeddedBroker broker = EmbeddedBroker.start();
    assertTrue(InetAddress.getByName(broker.uri().host()).isLoopbackAddress());
    useIt(broker);
    broker.close();
    broker.close();
    await()
        .atMost(Duration.ofSeconds(20))
        .untilAsserted(() -> assertEquals(Set.of(), newThreads(before)));
  }

  private static void useIt(EmbeddedBroker broker) {
    RunDelivery delivery =
        RunDelivery.to(
            URI.create(broker.uri().toString()), "bath-1", DeliverySettings.of(1, Events.TIMING));
    delivery.offer(Events.event("e1"));
    assertEquals(1, delivery.finish(LIMIT).received().size());
  }

  private static Set<Thread> newThreads(Set<Thread> before) {
    return Thread.getAllStackTraces().keySet().stream()
        .filter(thread -> !before.contains(thread))
        .filter(thread -> !thread.getName().startsWith("awaitility"))
        .collect(Collectors.toSet());
  }
}
