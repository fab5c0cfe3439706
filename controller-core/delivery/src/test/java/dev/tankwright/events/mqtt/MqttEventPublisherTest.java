package dev.tankwright.events.mqtt;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.awaitility.Awaitility.await;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.EOFException;
import java.time.Duration;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

@Timeout(60)
class MqttEventPublisherTest {
  private static final Duration LONG = Duration.ofSeconds(30);
  private static final Timing TIMING = new Timing(System::nanoTime, new Random(1));

  private final MemoryQueue queue = new MemoryQueue();
  private final ScriptedLinks links = new ScriptedLinks(true);

  private EventPublisher start(PublisherConfig config, ScriptedLinks factory) {
    return MqttEventPublisher.start(config, TIMING, queue, factory, false);
  }

  private static PublisherConfig config() {
    return PublisherConfig.forDevice(BrokerAccess.of(new BrokerUri("127.0.0.1", 1)), "bath-1", 1)
        .withTimeouts(LONG, LONG)
        .withWindow(3);
  }

  private void offer(int from, int to) {
    IntStream.range(from, to)
        .forEach(i -> queue.add(new OutgoingEvent("e" + i, "{}".getBytes(UTF_8))));
  }

  private ScriptedLinks.ScriptedLink link(int index) {
    await().until(() -> links.count() > index);
    return links.get(index);
  }

  private static void awaitSent(ScriptedLinks.ScriptedLink link, String... ids) {
    await().untilAsserted(() -> assertEquals(List.of(ids), link.sent));
  }

  @Test
  void keepsItsWindowAndItsOrder() {
    EventPublisher publisher = start(config(), links);
    offer(0, 5);
    awaitSent(link(0), "e0", "e1", "e2");
    link(0).acknowledge(0);
    awaitSent(link(0), "e0", "e1", "e2", "e3");
    link(0).acknowledge(1);
    awaitSent(link(0), "e0", "e1", "e2", "e3", "e4");
    IntStream.range(2, 5).forEach(link(0)::acknowledge);
    PublishReport report = publisher.close(LONG);
    assertEquals(new PublishReport(5, List.of(), null), report);
    assertEquals(List.of("announce", "goodbye"), link(0).calls);
  }

  @Test
  void sendsAgainWhatALostLinkOwes() {
    EventPublisher publisher = start(config(), links);
    offer(0, 4);
    awaitSent(link(0), "e0", "e1", "e2");
    link(0).acknowledge(1);
    awaitSent(link(0), "e0", "e1", "e2", "e3");
    link(0).lose(new EOFException());
    awaitSent(link(1), "e0", "e2", "e3");
    assertTrue(link(0).calls.contains("abandon"));
    IntStream.range(0, 3).forEach(link(1)::acknowledge);
    PublishReport report = publisher.close(LONG);
    assertEquals(4, report.acknowledged());
    assertEquals(List.of(), report.undelivered());
    assertTrue(report.lastError().contains("tcp://127.0.0.1:1 broke"), report.lastError());
  }

  @Test
  void countsALateAcknowledgementOnceAndKeepsItsWindow() {
    EventPublisher publisher = start(config(), links);
    offer(0, 5);
    awaitSent(link(0), "e0", "e1", "e2");
    link(0).lose(new EOFException());
    awaitSent(link(1), "e0", "e1", "e2");
    link(0).acknowledge(0);
    link(1).acknowledge(0);
    awaitSent(link(1), "e0", "e1", "e2", "e3");
    IntStream.range(1, 4).forEach(link(1)::acknowledge);
    awaitSent(link(1), "e0", "e1", "e2", "e3", "e4");
    link(1).acknowledge(4);
    assertEquals(5, publisher.close(LONG).acknowledged());
  }

  @Test
  void givesUpALinkThatAcknowledgesNothing() {
    EventPublisher publisher = start(config().withTimeouts(LONG, Duration.ofMillis(50)), links);
    offer(0, 1);
    awaitSent(link(1), "e0");
    PublishReport report = publisher.close(Duration.ZERO);
    assertEquals(List.of("e0"), report.undelivered());
    assertTrue(report.lastError().contains("does not acknowledge"), report.lastError());
  }

  @Test
  void givesUpALinkThatNeverOpens() {
    ScriptedLinks mute = new ScriptedLinks(false);
    EventPublisher publisher = start(config().withTimeouts(Duration.ofMillis(50), LONG), mute);
    offer(0, 2);
    await().until(() -> mute.count() >= 3);
    PublishReport report = publisher.close(Duration.ZERO);
    assertEquals(List.of("e0", "e1"), report.undelivered());
    assertTrue(report.lastError().contains("does not answer"), report.lastError());
    assertTrue(mute.get(0).calls.contains("abandon"));
  }

  @Test
  void holdsBackUntilItMaySpeak() {
    EventPublisher publisher = MqttEventPublisher.start(config(), TIMING, queue, links, true);
    offer(0, 2);
    assertEquals(List.of(), link(0).calls);
    publisher.resume();
    awaitSent(link(0), "e0", "e1");
    assertEquals(List.of("announce"), link(0).calls);
    publisher.hold();
    link(0).acknowledge(0);
    link(0).acknowledge(1);
    offer(2, 3);
    PublishReport report = publisher.close(Duration.ofMillis(50));
    assertEquals(List.of("e2"), report.undelivered());
    assertEquals(List.of("e0", "e1"), link(0).sent);
    assertNull(report.lastError());
  }

  @Test
  void reportsTheSameAgainAfterItsEnd() {
    EventPublisher publisher = start(config(), links);
    PublishReport report = publisher.close(LONG);
    assertEquals(report, publisher.close(LONG));
  }

  @Test
  void tellsOnlyTheLastOfManyStatusesWhileOneIsOnItsWay() {
    EventPublisher publisher = start(config(), links);
    await().until(() -> links.count() == 1 && link(0).statuses.size() == 1);
    for (String phase : List.of("HEATING", "DEGASSING", "CLEANING")) {
      publisher.status(new DeviceStatus(phase, false, false));
    }
    offer(0, 1);
    awaitSent(link(0), "e0");
    assertEquals(List.of(DeviceStatus.UNKNOWN), link(0).statuses);
    link(0).announced();
    DeviceStatus last = new DeviceStatus("CLEANING", false, false);
    await()
        .untilAsserted(() -> assertEquals(List.of(DeviceStatus.UNKNOWN, last), link(0).statuses));
    link(0).announced();
    link(0).lose(new EOFException());
    await().untilAsserted(() -> assertEquals(List.of(last), link(1).statuses));
    publisher.close(Duration.ZERO);
  }
}
