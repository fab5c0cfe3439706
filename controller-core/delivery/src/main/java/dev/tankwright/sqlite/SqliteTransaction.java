package dev.tankwright.sqlite;

import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;

/**
 * Transactions over a connection to SQLite, whose driver is left in its own mode.
 *
 * <p>They are said in SQL and not by the driver: a full disk can end a transaction by itself, and
 * what the driver then begins anew has committed the half of a group.
 */
public final class SqliteTransaction {
  /** What is done in a transaction. */
  @FunctionalInterface
  public interface Work {
    /** Does it; begins and ends nothing. */
    void run() throws SQLException;
  }

  private SqliteTransaction() {}

  /**
   * Does all of some work, or nothing of it.
   *
   * @throws SQLException when the work or its commit failed; it has been taken back then
   */
  public static void run(Connection connection, Work work) throws SQLException {
    try {
      begin(connection);
      work.run();
      commit(connection);
    } catch (SQLException e) {
      rollback(connection);
      throw e;
    }
  }

  /** Begins a transaction that may write. */
  public static void begin(Connection connection) throws SQLException {
    say(connection, "BEGIN IMMEDIATE");
  }

  /** Ends it. */
  public static void commit(Connection connection) throws SQLException {
    say(connection, "COMMIT");
  }

  /** Takes back what was not committed; also where nothing is open any more. */
  public static void rollback(Connection connection) {
    try {
      say(connection, "ROLLBACK");
    } catch (SQLException e) {
      // SQLite has rolled back by itself, or nothing had begun
    }
  }

  private static void say(Connection connection, String sql) throws SQLException {
    try (Statement statement = connection.createStatement()) {
      statement.executeUpdate(sql);
    }
  }
}
