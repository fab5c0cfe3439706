package dev.tankwright.record;

import java.sql.SQLException;

/**
 * Where events are stored, and in what a database differs from another one. Stateless; each
 * connection that it makes belongs to one thread.
 */
public interface Database {
  /** The database in messages; without a password, whatever was given. */
  String name();

  /**
   * A connection that may write, for one recorder at a time; makes what can be made of a database
   * that is not there yet.
   *
   * @throws StoreException if another recorder has it, or it cannot be used
   */
  Sql write() throws SQLException, StoreException;

  /**
   * A connection that only reads, beside a recorder or without one.
   *
   * @throws StoreException if there is none
   */
  Sql read() throws SQLException, StoreException;

  /** The column type for octets. */
  String octets();

  /** Begins a transaction. */
  void begin(Sql sql) throws SQLException;

  /** Ends it; when this returns the rows outlive a loss of power. */
  void commit(Sql sql) throws SQLException;

  /** Takes back what was not committed. */
  void rollback(Sql sql) throws SQLException;

  /** What went wrong, in words that say what would be right. */
  default StoreException failing(SQLException e) {
    return StoreException.failing(
        name() + " cannot be used (" + firstLine(e) + "); " + advice(e), e);
  }

  /** What a person can do about an error. */
  String advice(SQLException e);

  private static String firstLine(SQLException e) {
    String text = e.getMessage() == null ? e.getClass().getSimpleName() : e.getMessage();
    return text.lines().findFirst().orElse("no reason given").strip();
  }
}
