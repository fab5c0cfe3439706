package dev.tankwright.delivery;

import static org.awaitility.Awaitility.await;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.tankwright.events.mqtt.BrokerUri;
import dev.tankwright.events.mqtt.DeviceTopics;
import dev.tankwright.events.mqtt.EventPublisher;
import dev.tankwright.events.mqtt.MqttEventPublisher;
import dev.tankwright.events.mqtt.PublisherConfig;
import java.io.IOException;
import java.net.InetAddress;
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
  private static final DeviceTopics TOPICS = new DeviceTopics("bath-1");
  private static final Optional<String> ONLINE =
      Optional.of("{\"state\":\"online\",\"session\":7}");
  private static final Optional<String> OFFLINE =
      Optional.of("{\"state\":\"offline\",\"session\":7}");

  private static EventSubscriber subscriber(BrokerUri broker, String clientId) {
    EventSubscriber.Presence nobody =
        new EventSubscriber.Presence() {
          @Override
          public void present() {}

          @Override
          public void absent() {}
        };
    return EventSubscriber.start(
        broker, TOPICS, clientId, Duration.ofSeconds(20), Events.TIMING, nobody);
  }

  private static void awaitStatus(BrokerUri broker, String clientId, Optional<String> expected) {
    try (EventSubscriber late = subscriber(broker, clientId)) {
      await().atMost(Duration.ofSeconds(30)).until(late::lastStatus, expected::equals);
    }
  }

  /** The retained last will of MQTT 3.1.1, 3.1.2.5 and 3.1.2.7. */
  @Test
  void keepsTheLastWillOfAClientThatWasCutOff() throws IOException {
    try (EmbeddedBroker broker = EmbeddedBroker.start();
        CuttableProxy proxy = new CuttableProxy(broker.uri())) {
      PublisherConfig config = PublisherConfig.forDevice(proxy.uri(), "bath-1", 7);
      EventPublisher publisher = MqttEventPublisher.start(config, Events.TIMING);
      awaitStatus(broker.uri(), "first", ONLINE);
      proxy.vanish();
      awaitStatus(broker.uri(), "second", OFFLINE);
      awaitStatus(broker.uri(), "third", OFFLINE);
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
        Duration limit = Duration.ofSeconds(30);
        assertEquals(List.of(), inbox.awaitAll(List.of("1", "2", "3"), limit, limit));
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
    EventPublisher publisher =
        MqttEventPublisher.start(
            PublisherConfig.forDevice(broker.uri(), "bath-1", 7), Events.TIMING);
    awaitStatus(broker.uri(), "reader", ONLINE);
    publisher.close(Duration.ofSeconds(20));
  }

  private static Set<Thread> newThreads(Set<Thread> before) {
    return Thread.getAllStackTraces().keySet().stream()
        .filter(thread -> !before.contains(thread))
        .filter(thread -> !thread.getName().startsWith("awaitility"))
        .collect(Collectors.toSet());
  }
}
