package dev.tankwright.bench.mqtt;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.tankwright.events.ChainCheck;
import dev.tankwright.events.ChainedEvent;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * What a recorder's database holds, by SQL of its own, checked against what an outbox's file says
 * was committed. Nothing is taken from the recorder's word.
 */
final class RecordedRows implements AutoCloseable {
  private final Connection connection;

  private RecordedRows(Connection connection) {
    this.connection = connection;
  }

  static RecordedRows of(Path sqlite) throws SQLException {
    return new RecordedRows(DriverManager.getConnection("jdbc:sqlite:" + sqlite));
  }

  static RecordedRows of(String postgres) throws SQLException {
    return new RecordedRows(
        DriverManager.getConnection(postgres, PostgresServer.USER, PostgresServer.PASSWORD));
  }

  /** How many events are there; 0 also before there are tables. */
  long events() {
    try {
      return number("SELECT COUNT(*) FROM event");
    } catch (SQLException e) {
      return 0;
    }
  }

  long number(String sql) throws SQLException {
    try (Statement statement = connection.createStatement();
        ResultSet found = statement.executeQuery(sql)) {
      assertTrue(found.next());
      return found.getLong(1);
    }
  }

  /** The first column of every row, as text. */
  List<String> texts(String sql) throws SQLException {
    List<String> texts = new ArrayList<>();
    try (Statement statement = connection.createStatement();
        ResultSet found = statement.executeQuery(sql)) {
      while (found.next()) {
        texts.add(found.getString(1));
      }
    }
    return texts;
  }

  /** Changes rows, as somebody would who has no business to. */
  int change(String sql, Object... values) throws SQLException {
    try (PreparedStatement statement = connection.prepareStatement(sql)) {
      for (int i = 0; i < values.length; i++) {
        statement.setObject(i + 1, values[i]);
      }
      return statement.executeUpdate();
    }
  }

  /**
   * Holds the stored events to be those of the outbox, each once, to the byte, in a whole chain.
   */
  void assertHoldsAll(Path outbox) throws Exception {
    Map<String, byte[]> committed = History.committed(outbox);
    ChainCheck check = ChainCheck.fromStart();
    long rows = 0;
    try (Statement statement = connection.createStatement();
        ResultSet row =
            statement.executeQuery(
                "SELECT sequence, payload FROM event WHERE device = '"
                    + Device.NAME
                    + "' ORDER BY sequence")) {
      while (row.next()) {
        rows++;
        byte[] payload = row.getBytes(2);
        assertArrayEquals(committed.get("%010d".formatted(row.getLong(1))), payload);
        assertEquals(List.of(), check.take(ChainedEvent.read(payload)));
      }
    }
    assertTrue(check.isWhole(), "the chain is whole");
    assertEquals(committed.size(), rows, "every committed event is there, and each once");
    assertEquals(0, number("SELECT COUNT(*) FROM finding WHERE closed IS NULL"));
  }

  @Override
  public void close() throws SQLException {
    connection.close();
  }
}
