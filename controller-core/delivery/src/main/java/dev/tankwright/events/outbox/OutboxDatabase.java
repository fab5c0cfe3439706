package dev.tankwright.events.outbox;

import dev.tankwright.events.mqtt.EventQueue;
import dev.tankwright.events.mqtt.OutgoingEvent;
import dev.tankwright.sqlite.SqliteTransaction;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.List;
import org.sqlite.SQLiteConfig;

/**
 * One connection to an outbox's file. Not thread-safe: the writer has one, the readers share
 * another, and in SQLite's write-ahead mode neither waits for the other.
 */
final class OutboxDatabase implements AutoCloseable {
  /** "tkwr" in ASCII: tells the file from any other of SQLite's. */
  private static final int APPLICATION = 0x746b7772;

  private static final int FORMAT = 1;
  private static final int BUSY_MILLIS = 5_000;

  private final Connection connection;

  private OutboxDatabase(Connection connection) {
    this.connection = connection;
  }

  /** The connection that may write; makes the tables of a new file. */
  static OutboxDatabase writer(Path file) throws SQLException, OutboxException {
    SQLiteConfig config = new SQLiteConfig();
    config.setBusyTimeout(BUSY_MILLIS);
    OutboxDatabase database = new OutboxDatabase(config.createConnection("jdbc:sqlite:" + file));
    try {
      database.prepare(file);
      return database;
    } catch (SQLException | OutboxException e) {
      database.close();
      throw e;
    }
  }

  /** A connection that only reads. */
  static OutboxDatabase reader(Path file) throws SQLException {
    SQLiteConfig config = new SQLiteConfig();
    config.setReadOnly(true);
    config.setBusyTimeout(BUSY_MILLIS);
    return new OutboxDatabase(config.createConnection("jdbc:sqlite:" + file));
  }

  private void prepare(Path file) throws SQLException, OutboxException {
    long application = number("PRAGMA application_id");
    long format = number("PRAGMA user_version");
    boolean empty = number("SELECT COUNT(*) FROM sqlite_master") == 0;
    if (!empty && (application != APPLICATION || format != FORMAT)) {
      throw new OutboxException(
          file + " is a database, but not an outbox of this version; name another file");
    }
    if (empty) {
      // before the first page is written, or never
      run("PRAGMA auto_vacuum = INCREMENTAL");
    }
    run("PRAGMA journal_mode = WAL");
    // NORMAL can lose the last commits of the write-ahead log in a power cut (sqlite.org/pragma)
    run("PRAGMA synchronous = FULL");
    if (empty) {
      create();
    }
    // an outbox that was made before hosts kept anything in theirs goes on as one without
    run(
        "CREATE TABLE IF NOT EXISTS host"
            + " (key INTEGER PRIMARY KEY CHECK (key = 1), memory BLOB NOT NULL)");
  }

  private void create() throws SQLException {
    transaction(this::tables);
  }

  private void tables() throws SQLException {
    run(
        "CREATE TABLE event (row INTEGER PRIMARY KEY, id TEXT NOT NULL, payload BLOB NOT NULL,"
            + " committed INTEGER NOT NULL)");
    run("CREATE TABLE state (key TEXT PRIMARY KEY, value INTEGER NOT NULL) WITHOUT ROWID");
    run("PRAGMA application_id = " + APPLICATION);
    run("PRAGMA user_version = " + FORMAT);
  }

  /** Lets the file grow no further than this; 0 for no limit. */
  void limit(long bytes) throws SQLException {
    long pages = bytes == 0 ? 0xFFFF_FFFEL : bytes / number("PRAGMA page_size");
    number("PRAGMA max_page_count = " + pages);
  }

  /** Adds events, of which the first gets the given row. Part of the open transaction. */
  void insert(long firstRow, List<EventWithMemory> events, long committedMillis)
      throws SQLException {
    try (PreparedStatement insert =
        connection.prepareStatement("INSERT INTO event VALUES (?, ?, ?, ?)")) {
      long row = firstRow;
      for (EventWithMemory noted : events) {
        insert.setLong(1, row);
        insert.setString(2, noted.event().id());
        insert.setBytes(3, noted.event().payload());
        insert.setLong(4, committedMillis);
        insert.executeUpdate();
        row++;
      }
    }
  }

  /** Keeps a number under a name. Part of the open transaction. */
  void keep(String key, long value) throws SQLException {
    try (PreparedStatement upsert =
        connection.prepareStatement("INSERT OR REPLACE INTO state VALUES (?, ?)")) {
      upsert.setString(1, key);
      upsert.setLong(2, value);
      upsert.executeUpdate();
    }
  }

  /** A kept number, or the other if there is none. */
  long kept(String key, long otherwise) throws SQLException {
    try (PreparedStatement query =
        connection.prepareStatement("SELECT value FROM state WHERE key = ?")) {
      query.setString(1, key);
      try (ResultSet found = query.executeQuery()) {
        return found.next() ? found.getLong(1) : otherwise;
      }
    }
  }

  /** Keeps what the host knows after the last event; null for nothing. In the open transaction. */
  void remember(byte[] memory) throws SQLException {
    if (memory == null) {
      run("DELETE FROM host");
      return;
    }
    try (PreparedStatement upsert =
        connection.prepareStatement("INSERT OR REPLACE INTO host VALUES (1, ?)")) {
      upsert.setBytes(1, memory);
      upsert.executeUpdate();
    }
  }

  /** What the host knew after the last event, or null. */
  byte[] remembered() throws SQLException {
    try (Statement statement = connection.createStatement();
        ResultSet found = statement.executeQuery("SELECT memory FROM host")) {
      return found.next() ? found.getBytes(1) : null;
    }
  }

  /** Events from a row on, in order, at most so many. */
  List<EventQueue.Entry> read(long fromRow, int most) throws SQLException {
    try (PreparedStatement query =
        connection.prepareStatement(
            "SELECT row, id, payload FROM event WHERE row >= ? ORDER BY row LIMIT ?")) {
      query.setLong(1, fromRow);
      query.setInt(2, most);
      List<EventQueue.Entry> entries = new ArrayList<>();
      try (ResultSet found = query.executeQuery()) {
        while (found.next()) {
          OutgoingEvent event = new OutgoingEvent(found.getString(2), found.getBytes(3));
          entries.add(new EventQueue.Entry(found.getLong(1), event));
        }
      }
      return entries;
    }
  }

  /** The one number that a statement gives; 0 when it gives none. */
  long number(String sql) throws SQLException {
    try (Statement statement = connection.createStatement();
        ResultSet found = statement.executeQuery(sql)) {
      return found.next() ? found.getLong(1) : 0;
    }
  }

  /** Runs a statement; returns how many rows it changed. */
  int run(String sql) throws SQLException {
    try (Statement statement = connection.createStatement()) {
      return statement.executeUpdate(sql);
    }
  }

  /** Does all of some work, or nothing of it. */
  void transaction(SqliteTransaction.Work work) throws SQLException {
    SqliteTransaction.run(connection, work);
  }

  /** Takes back what a failed statement may have left open. */
  void rollback() {
    SqliteTransaction.rollback(connection);
  }

  @Override
  public void close() throws SQLException {
    connection.close();
  }
}
