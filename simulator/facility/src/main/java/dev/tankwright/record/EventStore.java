package dev.tankwright.record;

import java.sql.SQLException;
import java.time.InstantSource;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.random.RandomGenerator;

/**
 * Stores what arrives, each event once, however often it comes. A batch is stored as a whole or not
 * at all. After a failure the connection is made anew with the next batch. Not thread-safe.
 */
public final class EventStore implements AutoCloseable {
  private static final DateTimeFormatter MOMENT =
      DateTimeFormatter.ofPattern("uuuu-MM-dd'T'HH:mm:ss.SSS'Z'").withZone(ZoneOffset.UTC);

  private final Database database;
  private final InstantSource clock;
  private final RandomGenerator chance;
  private final String clientId;
  private Sql sql;

  private EventStore(Database database, InstantSource clock, RandomGenerator chance)
      throws StoreException {
    this.database = database;
    this.clock = clock;
    this.chance = chance;
    try {
      connect();
      clientId = sql.first("SELECT client_id FROM recorder", row -> row.getString(1)).orElseThrow();
    } catch (SQLException e) {
      close();
      throw database.failing(e);
    }
  }

  /**
   * Opens a database for one recorder, and makes its tables if it has none.
   *
   * @param clock says when something was recorded; nothing is decided by it
   * @param chance gives a new database its client id
   * @throws StoreException if it is in use, is of another version or another kind, or cannot be
   *     reached
   */
  public static EventStore open(Database database, InstantSource clock, RandomGenerator chance)
      throws StoreException {
    return new EventStore(database, clock, chance);
  }

  private void connect() throws SQLException, StoreException {
    sql = database.write();
    try {
      Schema.prepare(sql, database, chance);
    } catch (SQLException | StoreException e) {
      close();
      throw e;
    }
  }

  /**
   * The name of this database's session at a broker: what arrives while no recorder is there is
   * kept for it under this name.
   */
  public String clientId() {
    return clientId;
  }

  /**
   * Stores a batch; when this returns it outlives a crash and a loss of power.
   *
   * @throws StoreException if nothing of it was stored; it can be tried again
   */
  public BatchResult take(List<Message> batch) throws StoreException {
    try {
      if (sql == null) {
        connect();
      }
      database.begin(sql);
      Intake intake = new Intake(sql, MOMENT.format(clock.instant()));
      for (Message message : batch) {
        intake.take(message);
      }
      BatchResult noted = intake.end();
      database.commit(sql);
      return noted;
    } catch (SQLException e) {
      giveUp();
      throw database.failing(e);
    }
  }

  private void giveUp() {
    if (sql != null) {
      try {
        database.rollback(sql);
      } catch (SQLException e) {
        // what closes the connection takes back what was not committed
      }
    }
    close();
  }

  /** Lets the database go. */
  @Override
  public void close() {
    if (sql != null) {
      sql.close();
      sql = null;
    }
  }
}
