package dev.tankwright.delivery;

import static dev.tankwright.delivery.Events.event;
import static dev.tankwright.delivery.Events.ids;
import static dev.tankwright.delivery.Events.idsOf;
import static dev.tankwright.delivery.Events.offer;
import static org.awaitility.Awaitility.await;
import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.net.URI;
import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

@Timeout(120)
class RunDeliveryTest {
  private static final Duration LIMIT = Duration.ofSeconds(60);
  private static final DeliverySettings SETTINGS = DeliverySettings.of(1, Events.TIMING);

  @Test
  void deliversThousandsInOrderThroughItsOwnBroker() {
    RunDelivery delivery = RunDelivery.embedded("bath-1", SETTINGS);
    offer(delivery, ids(0, 5000));
    DeliveryReport report = delivery.finish(LIMIT);
    assertNull(report.failure());
    assertEquals(5000, report.sent());
    assertEquals(ids(0, 5000), idsOf(report.received()));
    assertEquals(List.of(), report.undelivered());
    assertEquals(List.of(), report.doubled());
    assertEquals(0, report.foreign());
    assertArrayEquals(event("e0").payload(), report.received().get(0).payload());
  }

  @Test
  void usesOneBrokerForManyRunsAndKeepsThemApart() {
    try (BackgroundBroker broker = BackgroundBroker.start()) {
      for (int run = 0; run < 3; run++) {
        RunDelivery delivery = RunDelivery.through(broker, "bath-1", SETTINGS);
        List<String> ids = ids(10 * run, 10 * run + 10);
        offer(delivery, ids);
        DeliveryReport report = delivery.finish(LIMIT);
        assertEquals(ids, idsOf(report.received()));
        assertNull(report.failure());
        assertEquals(0, report.foreign());
      }
    }
  }

  @Test
  void tellsItsOwnEventsFromThoseOfOtherRuns() {
    try (BackgroundBroker broker = BackgroundBroker.start()) {
      RunDelivery ours = RunDelivery.through(broker, "bath-1", SETTINGS);
      offer(ours, ids(0, 1));
      await().atMost(LIMIT).until(() -> ours.receivedSoFar() == 1);
      RunDelivery other = RunDelivery.through(broker, "bath-1", SETTINGS);
      offer(other, List.of("x1", "x2"));
      assertEquals(List.of("x1", "x2"), idsOf(other.finish(LIMIT).received()));
      offer(ours, ids(1, 2));
      DeliveryReport report = ours.finish(LIMIT);
      assertEquals(ids(0, 2), idsOf(report.received()));
      assertEquals(2, report.foreign());
      assertNull(report.failure());
    }
  }

  @Test
  void tellsWhatCameTwice() {
    RunDelivery delivery = RunDelivery.embedded("bath-1", SETTINGS);
    offer(delivery, List.of("a", "b", "a"));
    DeliveryReport report = delivery.finish(LIMIT);
    assertEquals(3, report.sent());
    assertEquals(List.of("a", "b"), idsOf(report.received()));
    assertEquals(List.of("a"), report.doubled());
    assertNull(report.failure());
  }

  @Test
  void endsOnce() {
    RunDelivery delivery = RunDelivery.embedded("bath-1", SETTINGS);
    DeliveryReport report = delivery.finish(LIMIT);
    assertNull(report.failure());
    assertSame(report, delivery.finish(LIMIT));
    assertThrows(IllegalStateException.class, () -> delivery.offer(event("late")));
  }

  @Test
  void refusesWhatCannotBeRightBeforeTheRunStarts() {
    assertThrows(
        IllegalArgumentException.class,
        () -> RunDelivery.to(URI.create("tcp://broker.example"), "bath-1", SETTINGS));
    assertThrows(
        IllegalArgumentException.class,
        () -> RunDelivery.to(URI.create("tcp://localhost"), "bath/1", SETTINGS));
  }

  @Test
  void withoutABrokerOnlyCounts() {
    RunDelivery delivery = RunDelivery.none();
    offer(delivery, ids(0, 3));
    assertEquals(
        new DeliveryReport(3, List.of(), List.of(), List.of(), 0, null), delivery.finish(LIMIT));
    assertThrows(IllegalStateException.class, () -> delivery.offer(event("late")));
  }
}
