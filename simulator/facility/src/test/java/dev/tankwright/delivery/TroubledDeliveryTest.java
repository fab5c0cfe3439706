package dev.tankwright.delivery;

import static dev.tankwright.delivery.Events.ids;
import static dev.tankwright.delivery.Events.idsOf;
import static dev.tankwright.delivery.Events.offer;
import static org.awaitility.Awaitility.await;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.tankwright.events.mqtt.BrokerUri;
import java.io.IOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.URI;
import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

/** A run whose broker, or the way to it, fails. */
@Timeout(120)
class TroubledDeliveryTest {
  private static final Duration LIMIT = Duration.ofSeconds(60);
  private static final Duration SHORT = Duration.ofSeconds(1);

  private static EmbeddedBroker broker;

  @BeforeAll
  static void startBroker() throws IOException {
    broker = EmbeddedBroker.start();
  }

  @AfterAll
  static void stopBroker() {
    broker.close();
  }

  private static RunDelivery to(BrokerUri uri, String device) {
    return RunDelivery.to(
        URI.create(uri.toString()), device, DeliverySettings.of(1, Events.TIMING));
  }

  private static void awaitReceived(RunDelivery delivery, int count) {
    await().atMost(LIMIT).until(() -> delivery.receivedSoFar() == count);
  }

  private static void assertNothingArrived(DeliveryReport report, String words) {
    assertEquals(List.of(), report.received());
    assertEquals(ids(0, 5), report.undelivered());
    assertTrue(report.failure().startsWith("0 of 5 events reached"), report.failure());
    assertTrue(report.failure().contains(words), report.failure());
  }

  @Test
  void brokerRefuses() throws IOException {
    int port;
    try (ServerSocket gone = new ServerSocket(0, 1, InetAddress.getLoopbackAddress())) {
      port = gone.getLocalPort();
    }
    RunDelivery delivery = to(new BrokerUri("127.0.0.1", port), "refused");
    offer(delivery, ids(0, 5));
    assertNothingArrived(delivery.finish(SHORT), "connection refused");
  }

  @Test
  void brokerNeverAnswers() throws IOException {
    try (ServerSocket silent = new ServerSocket(0, 50, InetAddress.getLoopbackAddress())) {
      DeliverySettings impatient =
          new DeliverySettings(
              1, Events.TIMING, Duration.ofMillis(300), Duration.ofMillis(300), SHORT);
      URI uri = URI.create("tcp://127.0.0.1:" + silent.getLocalPort());
      RunDelivery delivery = RunDelivery.to(uri, "silent", impatient);
      offer(delivery, ids(0, 5));
      assertNothingArrived(delivery.finish(SHORT), "does not answer");
    }
  }

  @Test
  void brokerVanishesMidRun() throws IOException {
    try (CuttableProxy proxy = new CuttableProxy(broker.uri())) {
      RunDelivery delivery = to(proxy.uri(), "vanish");
      offer(delivery, ids(0, 10));
      awaitReceived(delivery, 10);
      proxy.vanish();
      offer(delivery, ids(10, 20));
      DeliveryReport report = delivery.finish(SHORT);
      assertEquals(ids(0, 10), idsOf(report.received()));
      assertEquals(ids(10, 20), report.undelivered());
      assertTrue(report.failure().contains(proxy.uri().toString()), report.failure());
    }
  }

  @Test
  void connectionsAreCutMidRunAndComeBack() throws IOException {
    try (CuttableProxy proxy = new CuttableProxy(broker.uri())) {
      RunDelivery delivery = to(proxy.uri(), "cut");
      offer(delivery, ids(0, 10));
      awaitReceived(delivery, 10);
      proxy.cut();
      offer(delivery, ids(10, 20));
      awaitReceived(delivery, 20);
      DeliveryReport report = delivery.finish(LIMIT);
      assertEquals(ids(0, 20), idsOf(report.received()));
      assertNull(report.failure());
    }
  }

  @Test
  void acknowledgementsAreSlow() throws IOException {
    try (CuttableProxy proxy = new CuttableProxy(broker.uri())) {
      RunDelivery delivery = to(proxy.uri(), "slow");
      offer(delivery, ids(0, 1));
      awaitReceived(delivery, 1);
      proxy.freeze();
      offer(delivery, ids(1, 500)); // far more than the window, and yet this returns
      assertEquals(1, delivery.receivedSoFar());
      proxy.thaw();
      DeliveryReport report = delivery.finish(LIMIT);
      assertEquals(ids(0, 500), idsOf(report.received()));
      assertNull(report.failure());
    }
  }

  @Test
  void brokerStopsAcknowledging() throws IOException {
    try (CuttableProxy proxy = new CuttableProxy(broker.uri())) {
      RunDelivery delivery = to(proxy.uri(), "mute");
      offer(delivery, ids(0, 1));
      awaitReceived(delivery, 1);
      proxy.freeze();
      offer(delivery, ids(1, 3));
      DeliveryReport report = delivery.finish(SHORT);
      assertEquals(ids(1, 3), report.undelivered());
      assertTrue(report.failure().startsWith("1 of 3 events reached"), report.failure());
    }
  }
}
