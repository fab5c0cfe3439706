package dev.tankwright.record;

import java.io.IOException;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Reads what was recorded, beside a recorder or without one; changes nothing. Not thread-safe.
 *
 * <p>Every method throws {@link StoreException} when the database cannot be read.
 */
public final class Records implements AutoCloseable {
  private static final int CHUNK = 1_000;

  /** Takes rows one after another. */
  public interface Rows {
    /** The next one; what it throws ends the reading. */
    void take(EventRow row) throws IOException;
  }

  private interface Query<T> {
    T run() throws SQLException;
  }

  private final Database database;
  private final Sql sql;

  private Records(Database database, Sql sql) {
    this.database = database;
    this.sql = sql;
  }

  /** Opens a database in which something was recorded. */
  public static Records open(Database database) throws StoreException {
    Sql sql = null;
    try {
      sql = database.read();
      Schema.require(sql, database.name());
      return new Records(database, sql);
    } catch (SQLException | StoreException e) {
      if (sql != null) {
        sql.close();
      }
      throw e instanceof SQLException failed ? database.failing(failed) : (StoreException) e;
    }
  }

  /** The devices of which something was recorded, in order. */
  public List<String> devices() throws StoreException {
    return ask(
        () -> sql.list("SELECT device FROM device ORDER BY device", row -> row.getString(1)));
  }

  /** How far a device has come. */
  Optional<RecordedChain> state(String device) throws StoreException {
    return ask(() -> RecordedChain.load(sql, device));
  }

  /** The cycles of a device, or of all, in the order of devices and numbers. */
  public List<CycleRow> cycles(Optional<String> device) throws StoreException {
    List<CycleRow> all = new ArrayList<>();
    for (String one : device.map(List::of).orElse(devices())) {
      all.addAll(
          ask(
              () ->
                  sql.list(
                      CycleRow.SELECT + "WHERE device = ? ORDER BY cycle", CycleRow::read, one)));
    }
    return all;
  }

  /** The events of one cycle, in order. */
  public List<EventRow> events(CycleRow cycle) throws StoreException {
    return ask(
        () ->
            sql.list(
                EventRow.SELECT + "WHERE device = ? AND subject = ? ORDER BY sequence",
                EventRow::read,
                cycle.device(),
                cycle.subject()));
  }

  /** One event. */
  public Optional<EventRow> event(String device, long sequence) throws StoreException {
    return ask(
        () ->
            sql.first(
                EventRow.SELECT + "WHERE device = ? AND sequence = ?",
                EventRow::read,
                device,
                sequence));
  }

  /** All events of a device in order, read in pieces. */
  public void each(String device, Rows rows) throws IOException {
    long after = -1;
    List<EventRow> chunk;
    do {
      long from = after;
      chunk =
          ask(
              () ->
                  sql.list(
                      EventRow.SELECT
                          + "WHERE device = ? AND sequence > ? ORDER BY sequence LIMIT "
                          + CHUNK,
                      EventRow::read,
                      device,
                      from));
      for (EventRow row : chunk) {
        rows.take(row);
        after = row.sequence();
      }
    } while (!chunk.isEmpty());
  }

  /** What was noticed while recording and is still so. */
  public List<Finding> openFindings(String device) throws StoreException {
    return ask(
        () ->
            sql.list(
                "SELECT kind, first_sequence, last_sequence FROM finding"
                    + " WHERE device = ? AND closed IS NULL ORDER BY first_sequence, kind",
                row ->
                    Finding.of(
                        device,
                        FindingKind.valueOf(row.getString(1)),
                        row.getLong(2),
                        row.getLong(3)),
                device));
  }

  /** How many messages were put aside because they are no events, or others than are stored. */
  public long aside() throws StoreException {
    return ask(() -> sql.number("SELECT COUNT(*) FROM aside"));
  }

  private <T> T ask(Query<T> query) throws StoreException {
    try {
      return query.run();
    } catch (SQLException e) {
      throw database.failing(e);
    }
  }

  @Override
  public void close() {
    sql.close();
  }
}
