package dev.tankwright.bench.mqtt;

import static org.awaitility.Awaitility.await;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.tankwright.events.mqtt.BrokerAccess;
import dev.tankwright.events.mqtt.BrokerUri;
import dev.tankwright.events.outbox.OutboxSettings;
import dev.tankwright.extent.Needs;
import dev.tankwright.extent.Service;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.Set;
import java.util.concurrent.atomic.AtomicReference;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.io.TempDir;

/**
 * Faults between the commit of an event and its arrival. After each, every committed event has
 * arrived at least once, first arrivals in order, and the chain is whole, as a history from outside
 * tells.
 */
@Timeout(180)
@Needs(Service.MOSQUITTO)
class DeliveryFaultsTest {
  private static final Duration LIMIT = Duration.ofSeconds(60);

  @RegisterExtension final MosquittoBroker broker = MosquittoBroker.lasting();

  @TempDir private Path folder;

  private FaultyWay way;
  private History history;
  private Path file;

  @BeforeEach
  void open() throws Exception {
    way = new FaultyWay(broker.port());
    history = new History(broker.uri());
    file = folder.resolve("outbox.db");
  }

  @AfterEach
  void close() throws Exception {
    history.close();
    way.close();
  }

  private Device device() throws Exception {
    return new Device(file, way.uri());
  }

  private void awaitArrivals(int count) {
    await().atMost(LIMIT).until(() -> history.arrivals() >= count);
  }

  @Test
  void brokerKilledAndRestarted() throws Exception {
    Path kept = broker.directory().resolve("mosquitto.db");
    await().atMost(LIMIT).until(() -> holds(kept, "facility"));
    try (Device device = device()) {
      for (int round = 1; round <= 3; round++) {
        device.happen(50);
        device.awaitDrained();
        // what mosquitto has acknowledged and not yet handed on is its own to lose
        awaitArrivals(100 * round - 50);
        broker.kill();
        device.happen(50);
        broker.start();
        history.comeBack();
        device.awaitDrained();
      }
      assertEquals(300, history.assertNothingLost(file, "broker killed").committed());
    }
  }

  private static boolean holds(Path kept, String text) throws Exception {
    return Files.exists(kept)
        && new String(Files.readAllBytes(kept), StandardCharsets.ISO_8859_1).contains(text);
  }

  @Test
  void networkCut() throws Exception {
    try (Device device = device()) {
      for (int round = 1; round <= 5; round++) {
        device.happen(300);
        awaitArrivals(300 * (round - 1) + 1);
        way.cut();
      }
      device.awaitDrained();
      assertEquals(1500, history.assertNothingLost(file, "network cut").committed());
    }
  }

  @Test
  void networkDelayed() throws Exception {
    way.delay(3);
    try (Device device = device()) {
      device.happen(300);
      device.awaitDrained();
      assertEquals(300, history.assertNothingLost(file, "network delayed").committed());
    }
  }

  @Test
  void networkSwallowsEverything() throws Exception {
    try (Device device = device()) {
      device.happen(100);
      awaitArrivals(1);
      way.swallowAll(true);
      device.happen(100);
      await().atMost(LIMIT).until(() -> device.publisher.lastError() != null);
      way.swallowAll(false);
      device.happen(100);
      device.awaitDrained();
      assertEquals(300, history.assertNothingLost(file, "network black-holed").committed());
    }
  }

  @Test
  void acknowledgementsLost() throws Exception {
    try (Device device = device()) {
      device.happen(10);
      device.awaitDrained();
      way.loseAcks(3);
      device.happen(50);
      device.awaitDrained();
      assertEquals(0, way.acksStillToLose());
      History.Counts counts = history.assertNothingLost(file, "acknowledgement lost");
      assertTrue(counts.doubled() > 0, "what was sent again is recognised by its id");
    }
  }

  @Test
  void brokerAcceptsConnectionsAndDropsThem() throws Exception {
    way.dropConnections(5);
    try (Device device = device()) {
      device.happen(100);
      device.awaitDrained();
      assertEquals(100, history.assertNothingLost(file, "broker accepts and drops").committed());
    }
  }

  /** Nothing can bring such an event back: MQTT 3.1.1 has no refusal. But it cannot be hidden. */
  @Test
  void anEventThatIsAcknowledgedAndThrownAwayShowsAsAGap() throws Exception {
    try (Device device = device()) {
      device.happen(20);
      device.awaitDrained();
      awaitArrivals(20);
      way.acknowledgeAndSwallow(1);
      device.happen(20);
      device.awaitDrained();
      awaitArrivals(39);
      History.Counts counts = history.count(file);
      assertEquals(new History.Counts(40, 39, 1, 0, 0), counts);
    }
  }

  @Test
  void diskFullUntilTheBrokerComesBack() throws Exception {
    way.swallowAll(true);
    OutboxSettings small =
        OutboxSettings.STANDARD
            .withMostBytes(256 * 1024)
            .withRetention(Duration.ofDays(1), 1 << 30);
    BrokerAccess access = BrokerAccess.of(BrokerUri.of(way.uri()));
    try (Device device = new Device(file, access, small, () -> Instant.EPOCH)) {
      device.happen(1000);
      await().atMost(LIMIT).until(() -> device.outbox.trouble() != null);
      assertTrue(device.outbox.health().waiting() > 0, "events wait");
      way.swallowAll(false);
      device.awaitDrained();
      assertNull(device.outbox.trouble());
      assertEquals(0, device.outbox.health().refused());
      // room was made of acknowledged events, so the file no longer holds all: count arrivals
      await().atMost(LIMIT).until(() -> history.distinct() == 1000);
      assertTrue(history.isWhole(), "the chain is whole");
    }
  }

  @Test
  void clockSetBack() throws Exception {
    AtomicReference<Instant> now = new AtomicReference<>(Instant.parse("2026-03-02T07:30:00Z"));
    BrokerAccess access = BrokerAccess.of(BrokerUri.of(way.uri()));
    try (Device device = new Device(file, access, OutboxSettings.STANDARD, now::get)) {
      device.happen(50);
      device.awaitDrained();
      now.set(Instant.parse("1970-01-01T00:00:00Z"));
      device.happen(50);
      device.awaitDrained();
      assertEquals(100, history.assertNothingLost(file, "clock set back").committed());
    }
  }

  @Test
  void theProcessEndsCleanlyWithEventsOwedAndTheNextOneSendsThem() throws Exception {
    way.swallowAll(true);
    Device first = device();
    first.happen(500);
    await().atMost(LIMIT).until(() -> first.outbox.health().committed() == 500);
    assertNotNull(first.stop(Duration.ZERO));
    way.swallowAll(false);
    way.cut();
    try (Device second = device()) {
      assertEquals(2, second.outbox.session());
      second.happen(100);
      second.awaitDrained();
      assertEquals(600, history.assertNothingLost(file, "process ended").committed());
    }
  }

  /** MQTT 3.1.1, 2.2.1: CONNECT 1, PUBLISH 3, PINGREQ 12, DISCONNECT 14; SUBSCRIBE would be 8. */
  @Test
  void thePublisherSubscribesToNothing() throws Exception {
    Device device = device();
    device.happen(10);
    device.awaitDrained();
    way.cut();
    device.happen(10);
    device.awaitDrained();
    device.stop(Duration.ofSeconds(5));
    await().atMost(LIMIT).until(() -> way.saidByClient().contains(14));
    assertTrue(Set.of(1, 3, 12, 14).containsAll(way.saidByClient()), way.saidByClient()::toString);
  }
}
