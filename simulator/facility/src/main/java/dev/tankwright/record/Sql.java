package dev.tankwright.record;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** One connection, with its statements prepared once. Not thread-safe. */
final class Sql implements AutoCloseable {
  /** Makes something of a row. */
  interface Row<T> {
    T read(ResultSet row) throws SQLException;
  }

  private final Connection connection;
  private final AutoCloseable lock;
  private final Map<String, PreparedStatement> prepared = new HashMap<>();

  /**
   * Takes a connection over.
   *
   * @param lock what is to be let go when the connection is closed
   */
  Sql(Connection connection, AutoCloseable lock) {
    this.connection = connection;
    this.lock = lock;
  }

  Connection connection() {
    return connection;
  }

  /** Runs a statement that has no parameters and gives no rows. */
  void run(String sql) throws SQLException {
    try (Statement statement = connection.createStatement()) {
      statement.execute(sql);
    }
  }

  /** Changes rows; returns how many. */
  int update(String sql, Object... values) throws SQLException {
    return with(sql, values).executeUpdate();
  }

  <T> List<T> list(String sql, Row<T> row, Object... values) throws SQLException {
    List<T> all = new ArrayList<>();
    try (ResultSet found = with(sql, values).executeQuery()) {
      while (found.next()) {
        all.add(row.read(found));
      }
    }
    return all;
  }

  /** The first row, if there is one. */
  <T> Optional<T> first(String sql, Row<T> row, Object... values) throws SQLException {
    try (ResultSet found = with(sql, values).executeQuery()) {
      return found.next() ? Optional.of(row.read(found)) : Optional.empty();
    }
  }

  /** The one number that a query gives. */
  long number(String sql, Object... values) throws SQLException {
    return first(sql, row -> row.getLong(1), values).orElse(0L);
  }

  private PreparedStatement with(String sql, Object... values) throws SQLException {
    PreparedStatement statement = prepared.get(sql);
    if (statement == null) {
      statement = connection.prepareStatement(sql);
      prepared.put(sql, statement);
    }
    for (int i = 0; i < values.length; i++) {
      statement.setObject(i + 1, values[i]);
    }
    return statement;
  }

  /** Closes the connection and lets the lock go; what fails thereby is gone already. */
  @Override
  public void close() {
    for (AutoCloseable one : new AutoCloseable[] {connection, lock}) {
      try {
        one.close();
      } catch (Exception e) {
        // committed rows are safe, and a connection or a lock that cannot be closed is none
      }
    }
  }
}
