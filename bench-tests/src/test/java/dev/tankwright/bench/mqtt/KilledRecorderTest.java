package dev.tankwright.bench.mqtt;

import static org.awaitility.Awaitility.await;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.tankwright.extent.Extent;
import dev.tankwright.extent.Needs;
import dev.tankwright.extent.Service;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.io.TempDir;

/**
 * The recording process is killed (SIGKILL) at random moments while a device goes on publishing,
 * and started again each time; {@code -Dtankwright.recorder-kills=200} kills more often than the
 * build does. The seed is printed.
 */
@Timeout(3600)
@Needs({Service.MOSQUITTO, Service.POSTGRESQL})
class KilledRecorderTest {
  private static final int KILLS =
      Integer.getInteger("tankwright.recorder-kills", Extent.of(5, 20, "kills of the recorder"));
  private static final int SERVER_KILLS =
      Math.max(Extent.of(2, 5, "kills of the recorder at a server"), KILLS / 10);
  private static final int MOST_EVENTS = 60;
  private static final int LONGEST_MICROS = 3000;
  private static final int LONGEST_START_MILLIS = 900;

  @RegisterExtension static final PostgresServer SERVER = new PostgresServer();

  @RegisterExtension final MosquittoBroker broker = new MosquittoBroker();

  @TempDir private Path folder;

  private Random random;

  @Test
  void losesNothingIntoAFile() throws Exception {
    Path database = folder.resolve("facility.db");
    start(database.toString());
    try (RecordedRows rows = RecordedRows.of(database)) {
      killOften(KILLS, database.toString(), rows);
    }
  }

  @Test
  void losesNothingIntoAServer() throws Exception {
    String url = SERVER.newDatabase();
    start(url);
    try (RecordedRows rows = RecordedRows.of(url)) {
      killOften(SERVER_KILLS, url, rows);
    }
  }

  /** Once, so that the broker knows the session before anything is published. */
  private void start(String database) throws Exception {
    long seed = Long.getLong("tankwright.kills.seed", System.nanoTime());
    System.out.println("recorder kills " + KILLS + ", seed " + seed);
    random = new Random(seed);
    try (RecorderProcess first = recorder(database)) {
      first.awaitSaid("Listening");
    }
  }

  private RecorderProcess recorder(String database) throws Exception {
    List<String> user =
        database.startsWith("jdbc:") ? List.of("--db-user", PostgresServer.USER) : List.of();
    return RecorderProcess.start(folder, broker.uri(), database, user.toArray(String[]::new));
  }

  private void killOften(int kills, String database, RecordedRows rows) throws Exception {
    Path outbox = folder.resolve("outbox.db");
    try (Device device = new Device(outbox, broker.uri())) {
      for (int kill = 0; kill < kills; kill++) {
        device.happen(MOST_EVENTS);
        long before = rows.events();
        killAt(database, rows, kill % 5 == 4);
        assertTrue(rows.events() >= before, "a stored event was gone after kill " + kill);
      }
      device.awaitDrained();
      try (RecorderProcess last = recorder(database)) {
        int committed = History.committed(outbox).size();
        await().atMost(Duration.ofSeconds(60)).until(() -> rows.events() == committed);
        assertEquals(0, last.interrupt(), last.said());
        assertTrue(last.said().contains("0 open gaps"), last.said());
      }
    }
    rows.assertHoldsAll(outbox);
    System.out.printf(
        "recorder killed | %d times | %d events | %d doubled%n",
        kills, rows.events(), rows.number("SELECT SUM(doubled) FROM device"));
  }

  /** Kills while it starts, or after so many events and a moment more: it hits any step of it. */
  private void killAt(String database, RecordedRows rows, boolean whileStarting) throws Exception {
    try (RecorderProcess recorder = recorder(database)) {
      if (whileStarting) {
        recorder.process().waitFor(random.nextInt(LONGEST_START_MILLIS), TimeUnit.MILLISECONDS);
        return;
      }
      long enough = rows.events() + 1 + random.nextInt(MOST_EVENTS / 2);
      await()
          .atMost(Duration.ofSeconds(60))
          .pollInterval(Duration.ofMillis(1))
          .until(() -> rows.events() >= enough || !recorder.process().isAlive());
      assertTrue(recorder.process().isAlive(), recorder.said());
      recorder.process().waitFor(random.nextInt(LONGEST_MICROS), TimeUnit.MICROSECONDS);
    }
  }
}
