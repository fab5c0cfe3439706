package dev.tankwright.bench.mqtt;

import static org.awaitility.Awaitility.await;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.tankwright.extent.Needs;
import dev.tankwright.extent.Service;
import dev.tankwright.record.Message;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.Statement;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import org.eclipse.paho.client.mqttv3.MqttClient;
import org.eclipse.paho.client.mqttv3.persist.MemoryPersistence;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.io.TempDir;

/**
 * Faults between the arrival of an event and its row, with the command as a process and a real
 * broker. After each, every committed event is in the database once, as SQL from outside tells.
 */
@Timeout(300)
@Needs({Service.MOSQUITTO, Service.POSTGRESQL})
class RecorderFaultsTest {
  private static final Duration LIMIT = Duration.ofSeconds(90);
  private static final int A_DAY = 5000;

  @RegisterExtension static final PostgresServer SERVER = new PostgresServer();

  @RegisterExtension final MosquittoBroker broker = new MosquittoBroker();

  @TempDir private Path folder;

  private Path outbox;
  private Path database;

  @BeforeEach
  void places() {
    outbox = folder.resolve("outbox.db");
    database = folder.resolve("facility.db");
  }

  private RecorderProcess recorder() throws Exception {
    RecorderProcess recorder = RecorderProcess.start(folder, broker.uri(), database.toString());
    recorder.awaitSaid("Listening");
    return recorder;
  }

  private void awaitAll(RecordedRows rows) throws Exception {
    long committed = History.committed(outbox).size();
    await().atMost(LIMIT).until(() -> rows.events() == committed);
    rows.assertHoldsAll(outbox);
  }

  private static void awaitRows(RecordedRows rows, long count) {
    await().atMost(LIMIT).until(() -> rows.events() >= count);
  }

  @Test
  void recorderBehindByADay() throws Exception {
    try (RecorderProcess recorder = recorder()) {
      assertEquals(0, recorder.interrupt());
    }
    try (RecordedRows rows = RecordedRows.of(database);
        Device device = new Device(outbox, broker.uri())) {
      device.happen(A_DAY);
      device.awaitDrained();
      assertEquals(0, rows.events());
      try (RecorderProcess recorder = recorder()) {
        awaitAll(rows);
        assertEquals(0, recorder.interrupt(), recorder.said());
        assertTrue(recorder.said().contains(A_DAY + " new events"), recorder.said());
      }
    }
  }

  @Test
  void aLockedDatabaseIsWaitedForAndNothingIsAcknowledgedMeanwhile() throws Exception {
    try (RecorderProcess recorder = recorder();
        RecordedRows rows = RecordedRows.of(database);
        Device device = new Device(outbox, broker.uri())) {
      device.happen(20);
      awaitRows(rows, 20);
      try (Connection other = DriverManager.getConnection("jdbc:sqlite:" + database);
          Statement statement = other.createStatement()) {
        statement.execute("BEGIN IMMEDIATE");
        device.happen(200);
        recorder.awaitSaid("end its transaction");
        recorder.kill(); // had it acknowledged anything, that would be gone now
        statement.execute("ROLLBACK");
      }
      assertEquals(20, rows.events());
      try (RecorderProcess next = recorder()) {
        awaitAll(rows);
        assertEquals(0, next.interrupt(), next.said());
      }
    }
  }

  /** The system refuses the file to grow, as a full disk does; then there is room again. */
  @Test
  void aFullDiskIsWaitedForAndNothingIsLost() throws Exception {
    try (RecorderProcess recorder = recorder();
        RecordedRows rows = RecordedRows.of(database);
        Device device = new Device(outbox, broker.uri())) {
      limitFiles(recorder, "400000:unlimited");
      device.happen(A_DAY / 5);
      recorder.awaitSaid("free some space on its disk");
      assertTrue(rows.events() < A_DAY / 5, "not all had room");
      limitFiles(recorder, "unlimited");
      awaitAll(rows);
      recorder.awaitSaid("Recording again.");
      assertEquals(0, recorder.interrupt(), recorder.said());
    }
  }

  private static void limitFiles(RecorderProcess recorder, String octets) throws Exception {
    String pid = "" + recorder.process().pid();
    Process limit = new ProcessBuilder("prlimit", "--pid", pid, "--fsize=" + octets).start();
    assertEquals(0, limit.waitFor());
  }

  @Test
  void aServerThatCrashesIsWaitedForAndNothingIsLost() throws Exception {
    String url = SERVER.newDatabase();
    try (RecorderProcess recorder =
            RecorderProcess.start(folder, broker.uri(), url, "--db-user", PostgresServer.USER);
        Device device = new Device(outbox, broker.uri())) {
      recorder.awaitSaid("Listening");
      device.happen(100);
      try (RecordedRows rows = RecordedRows.of(url)) {
        awaitRows(rows, 100);
      }
      SERVER.crash();
      device.happen(100);
      recorder.awaitSaid("retrying");
      SERVER.start();
      try (RecordedRows rows = RecordedRows.of(url)) {
        awaitAll(rows);
      }
      recorder.awaitSaid("Recording again.");
      assertEquals(0, recorder.interrupt(), recorder.said());
      assertFalse(recorder.said().contains(PostgresServer.PASSWORD), recorder.said());
    }
  }

  @Test
  void whatABrokerThrewAwayIsMissedAndWhatIsNoEventIsKeptAside() throws Exception {
    CraftedEvents bath = new CraftedEvents("bath-1");
    List<Message> messages = new ArrayList<>(bath.some(9));
    messages.subList(3, 6).clear();
    messages.add(CraftedEvents.message("bath-1", "hello"));
    try (RecorderProcess recorder = recorder();
        RecordedRows rows = RecordedRows.of(database)) {
      publish(messages);
      recorder.awaitSaid("bath-1: GAP: events 4 to 6 are missing");
      recorder.awaitSaid("set aside: the payload is not UTF-8 JSON");
      assertEquals(1, recorder.interrupt(), recorder.said());
      assertTrue(recorder.said().contains("6 new events, 0 duplicates"), recorder.said());
      assertTrue(recorder.said().contains("1 open gaps"), recorder.said());
      assertEquals(6, rows.events());
    }
  }

  private void publish(List<Message> messages) throws Exception {
    try (MqttClient client =
        new MqttClient(broker.uri().toString(), "publisher", new MemoryPersistence())) {
      client.connect();
      for (Message message : messages) {
        client.publish(message.topic(), message.payload(), 1, false);
      }
      client.disconnect();
    }
  }
}
