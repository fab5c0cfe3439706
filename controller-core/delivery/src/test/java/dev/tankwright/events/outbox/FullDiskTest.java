package dev.tankwright.events.outbox;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.awaitility.Awaitility.await;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.tankwright.controller.board.NoticeKind;
import dev.tankwright.controller.board.NoticeRing;
import dev.tankwright.events.mqtt.EventQueue;
import dev.tankwright.events.mqtt.OutgoingEvent;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** A disk that is full; here the end of the disk is the limit that SQLite is given for the file. */
@Timeout(120)
class FullDiskTest {
  private static final OutboxSettings SMALL =
      OutboxSettings.STANDARD
          .withMostBytes(128 * 1024)
          .withRetention(Duration.ofDays(30), 1 << 30)
          .withWaiting(100);

  @TempDir private Path folder;

  private Outbox open() throws OutboxException {
    return Outbox.open(folder.resolve("outbox.db"), SMALL, () -> Instant.EPOCH);
  }

  private static OutgoingEvent event(int number) {
    return new OutgoingEvent(
        "e" + number, ("{\"x\":\"" + "y".repeat(1000) + "\"}").getBytes(UTF_8));
  }

  /** Appends until an event is refused; returns how many were taken. */
  private static int fill(Outbox outbox) {
    int taken = 0;
    while (outbox.trouble() == null || outbox.hasRoom()) {
      if (outbox.hasRoom() && outbox.append(event(taken))) {
        taken++;
      }
    }
    return taken;
  }

  @Test
  void stopsNothingSaysSoAndGoesOnWithoutAGapOnceThereIsRoom() throws OutboxException {
    try (Outbox outbox = open()) {
      int taken = fill(outbox);
      assertTrue(outbox.trouble().contains("full"), outbox.trouble());
      while (outbox.append(event(taken))) {
        taken++;
      }
      assertTrue(outbox.health().refused() > 0, "refused, and said so");
      assertFalse(outbox.isDrained());

      List<String> sent = new ArrayList<>();
      await()
          .atMost(Duration.ofSeconds(60))
          .until(
              () -> {
                for (EventQueue.Entry e = outbox.from(0); e != null; e = outbox.from(0)) {
                  sent.add(e.event().id());
                  outbox.acknowledge(e.row());
                }
                return outbox.isDrained();
              });
      assertNull(outbox.trouble());
      List<String> all = new ArrayList<>();
      for (int i = 0; i < sent.size(); i++) {
        all.add("e" + i);
      }
      assertEquals(all, sent);
      assertEquals(taken, sent.size());
    }
  }

  @Test
  void owesAfterARestartWhatWasCommittedBeforeTheDiskWasFull() throws OutboxException {
    Outbox full = open();
    fill(full);
    full.close();
    long committed = full.health().committed();
    assertTrue(full.health().waiting() > 0, "what was never committed is not claimed to be safe");
    try (Outbox outbox = open()) {
      assertEquals(committed, outbox.health().committed());
      assertEquals("e0", outbox.from(0).event().id());
      assertEquals("e" + (committed - 1), outbox.last().orElseThrow().id());
    }
  }

  /** A host that leaves notices in the controller's ring while the outbox has no room. */
  @Test
  void aHostThatFallsBehindHasItsGapAsAnEvent() throws OutboxException {
    NoticeRing ring = new NoticeRing(16);
    List<NoticeKind> composed = new ArrayList<>();
    try (Outbox outbox = open()) {
      int[] number = {fill(outbox)};
      for (int i = 0; i < 10_000; i++) {
        ring.put(NoticeKind.DRAIN_DUE, 0, 0, i);
      }
      await()
          .atMost(Duration.ofSeconds(60))
          .until(
              () -> {
                for (EventQueue.Entry e = outbox.from(0); e != null; e = outbox.from(0)) {
                  outbox.acknowledge(e.row());
                }
                if (outbox.hasRoom()) {
                  ring.drain(
                      (kind, first, second, uptime) -> {
                        composed.add(kind);
                        outbox.append(event(number[0]++));
                      });
                }
                return ring.isEmpty() && outbox.isDrained();
              });
      assertTrue(composed.contains(NoticeKind.NOTICES_LOST), composed::toString);
      assertEquals(0, outbox.health().refused());
      assertEquals(number[0], outbox.health().committed());
    }
  }
}
