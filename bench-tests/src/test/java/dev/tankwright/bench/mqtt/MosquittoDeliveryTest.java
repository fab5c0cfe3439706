package dev.tankwright.bench.mqtt;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.awaitility.Awaitility.await;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.tankwright.delivery.DeliveryReport;
import dev.tankwright.delivery.DeliverySettings;
import dev.tankwright.delivery.EventSubscriber;
import dev.tankwright.delivery.ReceivedEvent;
import dev.tankwright.delivery.RunDelivery;
import dev.tankwright.events.mqtt.BrokerAccess;
import dev.tankwright.events.mqtt.BrokerUri;
import dev.tankwright.events.mqtt.DeviceTopics;
import dev.tankwright.events.mqtt.OutgoingEvent;
import dev.tankwright.events.mqtt.Timing;
import dev.tankwright.extent.Needs;
import dev.tankwright.extent.Service;
import java.io.IOException;
import java.net.URI;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.extension.RegisterExtension;

/** A run's delivery through a broker of another make. */
@Timeout(180)
@Needs(Service.MOSQUITTO)
class MosquittoDeliveryTest {
  private static final Duration LIMIT = Duration.ofSeconds(60);
  private static final Timing TIMING = new Timing(System::nanoTime, new Random());

  @RegisterExtension final MosquittoBroker broker = new MosquittoBroker();

  private RunDelivery delivery() {
    return RunDelivery.to(broker.uri(), "bath-1", DeliverySettings.of(3, TIMING));
  }

  private static List<String> ids(int from, int to) {
    return IntStream.range(from, to).mapToObj(i -> "e" + i).toList();
  }

  private static void offer(RunDelivery delivery, List<String> ids) {
    for (String id : ids) {
      String json = "{\"specversion\":\"1.0\",\"id\":\"" + id + "\"}";
      delivery.offer(new OutgoingEvent(id, json.getBytes(UTF_8)));
    }
  }

  private static void assertAllArrived(List<String> ids, DeliveryReport report) {
    assertNull(report.failure());
    assertEquals(ids, report.received().stream().map(ReceivedEvent::id).toList());
    assertEquals(List.of(), report.undelivered());
  }

  private static void awaitReceived(RunDelivery delivery, int count) {
    await().atMost(LIMIT).until(() -> delivery.receivedSoFar() == count);
  }

  @Test
  void deliversInOrder() {
    RunDelivery delivery = delivery();
    offer(delivery, ids(0, 2000));
    DeliveryReport report = delivery.finish(LIMIT);
    assertAllArrived(ids(0, 2000), report);
    assertEquals(List.of(), report.doubled());
    assertEquals(0, report.foreign());
  }

  @Test
  void reportsWhatABrokerKilledMidRunNeverGot() {
    RunDelivery delivery = delivery();
    offer(delivery, ids(0, 20));
    awaitReceived(delivery, 20);
    broker.kill();
    offer(delivery, ids(20, 50));
    DeliveryReport report = delivery.finish(Duration.ofSeconds(1));
    assertEquals(ids(0, 20), report.received().stream().map(ReceivedEvent::id).toList());
    assertEquals(ids(20, 50), report.undelivered());
    assertTrue(report.failure().startsWith("20 of 50 events reached"), report.failure());
    assertTrue(report.failure().contains(broker.uri().toString()), report.failure());
  }

  @Test
  void deliversAllThroughABrokerRestartedMidRun() throws IOException {
    RunDelivery delivery = delivery();
    offer(delivery, ids(0, 20));
    awaitReceived(delivery, 20);
    broker.kill();
    offer(delivery, ids(20, 40));
    broker.start();
    offer(delivery, ids(40, 60));
    awaitReceived(delivery, 60);
    assertAllArrived(ids(0, 60), delivery.finish(LIMIT));
  }

  @Test
  void waitsForABrokerThatStartsLate() throws IOException {
    broker.kill();
    RunDelivery delivery = delivery();
    offer(delivery, ids(0, 20));
    broker.start();
    assertAllArrived(ids(0, 20), delivery.finish(LIMIT));
  }

  @Test
  void leavesARetainedOfflineBehind() {
    RunDelivery delivery = delivery();
    offer(delivery, ids(0, 1));
    assertAllArrived(ids(0, 1), delivery.finish(LIMIT));
    assertEquals(
        "{\"state\":\"offline\",\"session\":3,\"connection\":1,\"cause\":\"STOPPED\"}",
        retainedStatus(broker.uri()));
  }

  private static String retainedStatus(URI uri) {
    try (EventSubscriber late =
        EventSubscriber.start(
            BrokerAccess.of(BrokerUri.of(uri)),
            new DeviceTopics("bath-1"),
            "late",
            LIMIT,
            TIMING,
            new Nobody())) {
      return await().atMost(LIMIT).until(late::lastStatus, Optional::isPresent).orElseThrow();
    }
  }

  /** Hears nothing. */
  private record Nobody() implements EventSubscriber.Presence {
    @Override
    public void present() {}

    @Override
    public void absent() {}
  }
}
