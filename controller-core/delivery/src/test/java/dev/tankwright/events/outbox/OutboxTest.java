package dev.tankwright.events.outbox;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.awaitility.Awaitility.await;
import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.tankwright.events.mqtt.EventQueue;
import dev.tankwright.events.mqtt.OutgoingEvent;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

@Timeout(120)
class OutboxTest {
  @TempDir private Path folder;

  private volatile Instant now = Instant.parse("2026-03-02T07:30:00Z");

  private Path file() {
    return folder.resolve("outbox.db");
  }

  private Outbox open(OutboxSettings settings) throws OutboxException {
    return Outbox.open(file(), settings, () -> now);
  }

  private Outbox open() throws OutboxException {
    return open(OutboxSettings.STANDARD);
  }

  static OutgoingEvent event(int number) {
    return new OutgoingEvent("e" + number, ("{\"n\":" + number + "}").getBytes(UTF_8));
  }

  private static void append(Outbox outbox, int from, int to) {
    IntStream.range(from, to).forEach(i -> assertTrue(outbox.append(event(i)), "refused " + i));
  }

  private static void awaitCommitted(Outbox outbox, long rows) {
    await().untilAsserted(() -> assertEquals(rows, outbox.health().committed()));
  }

  private static List<String> owed(Outbox outbox) {
    List<String> ids = new ArrayList<>();
    for (EventQueue.Entry e = outbox.from(0); e != null; e = outbox.from(e.row() + 1)) {
      ids.add(e.event().id());
    }
    return ids;
  }

  private static List<String> ids(int from, int to) {
    return IntStream.range(from, to).mapToObj(i -> "e" + i).toList();
  }

  @Test
  void handsOutInOrderWhatIsCommittedUntilItIsAcknowledged() throws OutboxException {
    try (Outbox outbox = open()) {
      append(outbox, 0, 2000); // more than is kept in memory
      awaitCommitted(outbox, 2000);
      assertEquals(ids(0, 2000), owed(outbox));
      outbox.acknowledge(1);
      outbox.acknowledge(3);
      assertEquals("e1", outbox.from(0).event().id());
      assertEquals("e3", outbox.from(3).event().id());
      outbox.acknowledge(2);
      outbox.acknowledge(2);
      assertEquals(3, outbox.health().acknowledged());
      assertEquals(3, outbox.acknowledged());
      assertFalse(outbox.isDrained());
      IntStream.rangeClosed(4, 2000).forEach(outbox::acknowledge);
      assertTrue(outbox.isDrained());
      assertNull(outbox.from(0));
    }
  }

  @Test
  void owesAfterReopeningWhatWasNotAcknowledged() throws OutboxException {
    try (Outbox outbox = open()) {
      assertEquals(1, outbox.session());
      append(outbox, 0, 10);
      awaitCommitted(outbox, 10);
      IntStream.rangeClosed(1, 4).forEach(outbox::acknowledge);
      outbox.acknowledge(6); // not in a row with the others, so it may be sent again
    }
    try (Outbox outbox = open()) {
      assertEquals(2, outbox.session());
      assertEquals(ids(4, 10), owed(outbox));
      assertArrayEquals(event(9).payload(), outbox.last().orElseThrow().payload());
      append(outbox, 10, 11);
      awaitCommitted(outbox, 11);
      assertEquals(ids(4, 11), owed(outbox));
    }
  }

  @Test
  void keepsAnAcknowledgementSoonAlsoWhenNothingElseHappens() throws Exception {
    try (Outbox outbox = open()) {
      append(outbox, 0, 3);
      awaitCommitted(outbox, 3);
      outbox.acknowledge(1);
      outbox.acknowledge(2);
      try (OutboxDatabase outside = OutboxDatabase.reader(file())) {
        await().untilAsserted(() -> assertEquals(2, outside.kept(Outbox.ACKNOWLEDGED, 0)));
      }
    }
  }

  @Test
  void gathersAGroupWhenItIsToldToWait() throws Exception {
    try (Outbox outbox = open(OutboxSettings.STANDARD.withGroups(50, Duration.ofSeconds(100)))) {
      append(outbox, 0, 49);
      assertNull(outbox.from(0), "nothing may be sent before it is committed");
      append(outbox, 49, 50);
      awaitCommitted(outbox, 50);
    }
  }

  @Test
  void isItsOwnersAloneAndUsedByOneAtATime() throws IOException {
    try (Outbox outbox = open()) {
      append(outbox, 0, 1);
      awaitCommitted(outbox, 1);
      try (var files = Files.list(folder)) {
        for (Path each : files.toList()) {
          assertEquals(
              "rw-------",
              PosixFilePermissions.toString(Files.getPosixFilePermissions(each)),
              each::toString);
        }
      }
      OutboxException e = assertThrows(OutboxException.class, this::open);
      assertTrue(e.getMessage().contains("in use"), e.getMessage());
    }
    open().close();
  }

  @Test
  void takesOtherPeoplesRightsAwayFromAFileThatHadThem() throws IOException {
    open().close();
    Files.setPosixFilePermissions(file(), PosixFilePermissions.fromString("rw-rw-rw-"));
    open().close();
    assertEquals("rw-------", PosixFilePermissions.toString(Files.getPosixFilePermissions(file())));
  }

  @Test
  void refusesWhatIsNoOutbox() throws IOException {
    Files.writeString(file(), "a letter, and a long one, that is no database at all; ".repeat(40));
    OutboxException e = assertThrows(OutboxException.class, this::open);
    assertTrue(e.getMessage().contains("outbox.db"), e.getMessage());
    Path nowhere = folder.resolve("no/folder/outbox.db");
    e =
        assertThrows(
            OutboxException.class, () -> Outbox.open(nowhere, OutboxSettings.STANDARD, () -> now));
    assertTrue(e.getMessage().contains("a folder that exists"), e.getMessage());
  }

  @Test
  void refusesAnOutboxThatHasLostEvents() throws Exception {
    try (Outbox outbox = open()) {
      append(outbox, 0, 10);
    }
    try (OutboxDatabase outside = OutboxDatabase.writer(file())) {
      outside.run("DELETE FROM event WHERE row = 5");
    }
    OutboxException e = assertThrows(OutboxException.class, this::open);
    assertTrue(e.getMessage().contains("holds 9 events between 1 and 10"), e.getMessage());
  }

  @Test
  void keepsAcknowledgedEventsForTheirTimeAndOwedOnesForEver() throws OutboxException {
    OutboxSettings settings = OutboxSettings.STANDARD.withRetention(Duration.ofDays(1), 1 << 30);
    try (Outbox outbox = open(settings)) {
      append(outbox, 0, 10);
      awaitCommitted(outbox, 10);
      IntStream.rangeClosed(1, 6).forEach(outbox::acknowledge);
    }
    now = now.plus(Duration.ofDays(2));
    try (Outbox outbox = open(settings)) {
      append(outbox, 10, 11);
    }
    try (Outbox outbox = open(settings)) {
      assertEquals(ids(6, 11), owed(outbox));
      assertEquals(7, firstRow());
    }
  }

  private long firstRow() {
    try (OutboxDatabase outside = OutboxDatabase.reader(file())) {
      return outside.number("SELECT MIN(row) FROM event");
    } catch (java.sql.SQLException e) {
      throw new AssertionError(e);
    }
  }

  @Test
  void aClockThatIsSetBackTakesNothingAwayEarly() throws OutboxException {
    OutboxSettings settings = OutboxSettings.STANDARD.withRetention(Duration.ofDays(1), 1 << 30);
    try (Outbox outbox = open(settings)) {
      append(outbox, 0, 5);
      awaitCommitted(outbox, 5);
      now = now.minus(Duration.ofDays(400));
      append(outbox, 5, 10);
      awaitCommitted(outbox, 10);
      IntStream.rangeClosed(1, 8).forEach(outbox::acknowledge);
    }
    assertEquals(1, firstRow());
    now = now.plus(Duration.ofDays(2)); // row 6 is old by its clock, but stands behind younger ones
    open(settings).close();
    assertEquals(1, firstRow());
  }

  @Test
  void aLargeFileLosesItsOldestAcknowledgedEventsFirstAndNoOther() throws OutboxException {
    OutboxSettings settings = OutboxSettings.STANDARD.withRetention(Duration.ofDays(1), 200_000);
    byte[] large = "x".repeat(1000).getBytes(UTF_8);
    try (Outbox outbox = open(settings)) {
      for (int i = 0; i < 3000; i++) {
        outbox.append(new OutgoingEvent("e" + i, large));
      }
      awaitCommitted(outbox, 3000);
      assertEquals(1, firstRow(), "nothing is acknowledged, so nothing may go");
      IntStream.rangeClosed(1, 2900).forEach(outbox::acknowledge);
    }
    long first = firstRow();
    assertTrue(first > 2500 && first <= 2901, "the file begins with row " + first);
    try (Outbox outbox = open(settings)) {
      assertEquals(ids(2900, 3000), owed(outbox));
    }
  }

  @Test
  void theLastEventStaysSoThatTheSequenceCanGoOn() throws OutboxException {
    OutboxSettings settings = OutboxSettings.STANDARD.withRetention(Duration.ZERO, 0);
    try (Outbox outbox = open(settings)) {
      append(outbox, 0, 10);
      awaitCommitted(outbox, 10);
      IntStream.rangeClosed(1, 10).forEach(outbox::acknowledge);
    }
    try (Outbox outbox = open(settings)) {
      assertEquals("e9", outbox.last().orElseThrow().id());
      assertEquals(10, outbox.health().committed());
      assertEquals(10, firstRow());
    }
  }
}
