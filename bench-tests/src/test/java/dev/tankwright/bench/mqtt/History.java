package dev.tankwright.bench.mqtt;

import static org.awaitility.Awaitility.await;
import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.tankwright.events.ChainCheck;
import dev.tankwright.events.ChainFinding;
import dev.tankwright.events.ChainedEvent;
import dev.tankwright.events.NotAnEventException;
import java.net.URI;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Duration;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Set;
import java.util.TreeMap;
import java.util.concurrent.CopyOnWriteArrayList;
import org.eclipse.paho.client.mqttv3.IMqttDeliveryToken;
import org.eclipse.paho.client.mqttv3.MqttCallbackExtended;
import org.eclipse.paho.client.mqttv3.MqttException;
import org.eclipse.paho.client.mqttv3.MqttMessage;

/**
 * What a facility saw, checked against what the outbox's file says was committed: a subscriber of
 * its own with a lasting session, and SQL of its own. Nothing is taken from the publisher's word.
 */
final class History implements AutoCloseable {
  private static final Duration PATIENCE = Duration.ofSeconds(90);

  /**
   * The counts of one history.
   *
   * @param committed events that the outbox's file holds
   * @param received different events that arrived
   * @param lost committed and not received
   * @param doubled arrivals that had come before, byte for byte
   * @param late first arrivals after one with a higher number
   */
  record Counts(long committed, long received, long lost, long doubled, long late) {}

  private final LastingReader reader;
  private final List<byte[]> arrivals = new CopyOnWriteArrayList<>();

  History(URI broker) throws MqttException {
    reader = new LastingReader(broker, new Arrivals(), "tankwright/+/events");
  }

  /** Goes away as a reader does that is switched off; its session stays. */
  void leave() throws MqttException {
    reader.leave();
  }

  void comeBack() {
    reader.comeBack();
  }

  /** How many different events have arrived. */
  long distinct() {
    return arrivals.stream().map(History::read).map(ChainedEvent::id).distinct().count();
  }

  /** Whether what has arrived is a whole chain from its start. */
  boolean isWhole() {
    ChainCheck check = ChainCheck.fromStart();
    arrivals.forEach(payload -> check.take(read(payload)));
    return check.isWhole();
  }

  int arrivals() {
    return arrivals.size();
  }

  private final class Arrivals implements MqttCallbackExtended {
    @Override
    public void connectComplete(boolean again, String uri) {}

    @Override
    public void connectionLost(Throwable cause) {}

    @Override
    public void messageArrived(String topic, MqttMessage message) {
      arrivals.add(message.getPayload());
    }

    @Override
    public void deliveryComplete(IMqttDeliveryToken token) {}
  }

  /** Waits until all that the file holds has arrived, and holds it to be in order and whole. */
  Counts assertNothingLost(Path outbox, String fault) throws SQLException {
    Map<String, byte[]> committed = committed(outbox);
    try {
      await().atMost(PATIENCE).until(() -> count(committed).lost() == 0);
    } finally {
      Counts counts = count(committed);
      System.out.printf("history | %s | %s%n", fault, counts);
    }
    Counts counts = count(committed);
    assertTrue(counts.committed() > 0, "something was committed");
    assertEquals(counts.committed(), counts.received(), "nothing arrived that is not committed");
    assertEquals(0, counts.late(), "first arrivals come in order");
    return counts;
  }

  /** The counts as they are now. */
  Counts count(Path outbox) throws SQLException {
    return count(committed(outbox));
  }

  private Counts count(Map<String, byte[]> committed) {
    ChainCheck check = ChainCheck.fromStart();
    List<String> broken = new ArrayList<>();
    Set<String> came = new HashSet<>();
    for (byte[] payload : arrivals) {
      ChainedEvent event = read(payload);
      for (ChainFinding finding : check.take(event)) {
        if (finding.kind() == ChainFinding.Kind.BROKEN
            || finding.kind() == ChainFinding.Kind.CHANGED) {
          broken.add(finding.text());
        }
      }
      came.add(event.id());
      byte[] kept = committed.get(event.id());
      if (kept != null) {
        assertArrayEquals(kept, payload);
      }
    }
    assertEquals(List.of(), broken, "the chain is whole");
    long received = check.events();
    long missing = committed.keySet().stream().filter(id -> !came.contains(id)).count();
    return new Counts(
        committed.size(),
        received,
        missing,
        check.count(ChainFinding.Kind.DOUBLE),
        check.count(ChainFinding.Kind.LATE));
  }

  private static ChainedEvent read(byte[] payload) {
    try {
      return ChainedEvent.read(payload);
    } catch (NotAnEventException e) {
      throw new AssertionError(e);
    }
  }

  /** What the file holds, by id; rows are held to be without a gap. */
  static NavigableMap<String, byte[]> committed(Path outbox) throws SQLException {
    NavigableMap<String, byte[]> events = new TreeMap<>();
    try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + outbox);
        Statement statement = connection.createStatement();
        ResultSet rows =
            statement.executeQuery("SELECT row, id, payload FROM event ORDER BY row")) {
      long expected = 1;
      while (rows.next()) {
        assertEquals(expected++, rows.getLong(1), "rows have no gap");
        events.put(rows.getString(2), rows.getBytes(3));
      }
    }
    return events;
  }

  @Override
  public void close() throws MqttException {
    reader.close();
  }
}
