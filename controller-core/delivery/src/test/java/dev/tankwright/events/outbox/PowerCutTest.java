package dev.tankwright.events.outbox;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.tankwright.events.mqtt.EventQueue;
import dev.tankwright.events.mqtt.OutgoingEvent;
import dev.tankwright.extent.Extent;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.awaitility.Awaitility;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/**
 * Power goes in the middle of a write: what reached the disk is the database and a part of its
 * write-ahead log, cut anywhere, perhaps with rubbish where a sector was being written. After that
 * every event whose commit had ended before is there, in order, and no half of another.
 */
@Timeout(300)
class PowerCutTest {
  private static final int COMMITS = 30;
  private static final int EVENTS = 3;
  private static final int APART = 1499;

  /** Length of the log after a commit had ended, and how many events that made. */
  private record Point(long logBytes, long committed) {}

  @TempDir private Path folder;

  private final List<Point> points = new ArrayList<>();
  private byte[] database;
  private byte[] log;

  private static OutgoingEvent event(long row) {
    String text = "{\"id\":\"e" + row + "\",\"x\":\"" + "y".repeat((int) (row * 37 % 900)) + "\"}";
    return new OutgoingEvent("e" + row, text.getBytes(UTF_8));
  }

  private static Outbox open(Path file) throws OutboxException {
    return Outbox.open(file, OutboxSettings.STANDARD, () -> Instant.EPOCH);
  }

  // A commit takes a millisecond or two, and hundreds are waited for.
  private static void awaitCommitted(Outbox outbox, long rows) {
    Awaitility.await()
        .pollInterval(Duration.ofMillis(1))
        .until(() -> outbox.health().committed() == rows);
  }

  /** Writes an outbox and keeps what its files were when the power went. */
  @BeforeEach
  void write() throws IOException {
    Path file = folder.resolve("outbox.db");
    Path wal = folder.resolve("outbox.db-wal");
    try (Outbox outbox = open(file)) {
      points.add(new Point(Files.size(wal), 0));
      long row = 0;
      for (int commit = 0; commit < COMMITS; commit++) {
        for (int i = 0; i < EVENTS; i++) {
          assertTrue(outbox.append(event(++row)), "there was room");
        }
        long expected = row;
        awaitCommitted(outbox, expected);
        points.add(new Point(Files.size(wal), row));
      }
      database = Files.readAllBytes(file);
      log = Files.readAllBytes(wal);
    }
    assertTrue(points.get(COMMITS).logBytes() > points.get(1).logBytes(), "the log has grown");
  }

  private long committedBefore(long bytes) {
    return points.stream()
        .filter(point -> point.logBytes() <= bytes)
        .mapToLong(Point::committed)
        .max()
        .orElse(0);
  }

  /** Opens what is left as another start of the device does, and goes on from there. */
  private void recover(byte[] remaining, int cut) throws IOException {
    Path place = Files.createTempDirectory(folder, "cut");
    Path file = Files.write(place.resolve("outbox.db"), database);
    Files.write(place.resolve("outbox.db-wal"), remaining);
    try (Outbox outbox = open(file)) {
      long found = outbox.health().committed();
      assertTrue(
          found >= committedBefore(cut),
          () -> "cut at " + cut + ": " + found + " of " + committedBefore(cut) + " events");
      for (long row = 1; row <= found; row++) {
        EventQueue.Entry entry = outbox.from(row);
        assertEquals(row, entry.row());
        assertArrayEquals(event(row).payload(), entry.event().payload());
      }
      assertTrue(outbox.append(event(found + 1)), "it goes on");
      awaitCommitted(outbox, found + 1);
    }
  }

  @Test
  void losesNoCommittedEventWhereverTheLogIsCut() throws IOException {
    // A prime apart, so that cuts fall into every part of the log's frames.
    int all = log.length / APART + 1;
    int cuts = Extent.of(40, all, "cuts of an outbox's log");
    for (int i = 0; i < cuts; i++) {
      int cut = (int) ((long) i * all / cuts) * APART;
      recover(Arrays.copyOf(log, cut), cut);
    }
    for (Point point : Extent.some(points, 6, "commits whose end is cut")) {
      for (long cut = point.logBytes() - 1; cut <= point.logBytes() + 1; cut++) {
        recover(Arrays.copyOf(log, (int) Math.min(cut, log.length)), (int) cut);
      }
    }
  }

  @Test
  void losesNoCommittedEventWhenTheSectorBeingWrittenIsRubbish() throws IOException {
    Random random = new Random(5);
    int runs = Extent.of(12, 60, "sectors of rubbish in an outbox's log");
    for (int run = 0; run < runs; run++) {
      int cut = random.nextInt(log.length);
      byte[] torn = Arrays.copyOf(log, Math.min(log.length, cut + 512));
      for (int i = cut; i < torn.length; i++) {
        torn[i] = (byte) random.nextInt(256);
      }
      recover(torn, cut);
    }
  }
}
