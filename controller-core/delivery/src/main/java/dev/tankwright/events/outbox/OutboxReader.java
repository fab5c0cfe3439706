package dev.tankwright.events.outbox;

import dev.tankwright.events.mqtt.EventQueue;
import java.sql.SQLException;
import java.util.ArrayDeque;
import java.util.Optional;

/** Reads committed events back, some at a time. Thread-safe. */
final class OutboxReader {
  private static final int STRETCH = 256;

  private final OutboxDatabase database;
  private final ArrayDeque<EventQueue.Entry> ahead = new ArrayDeque<>();
  private boolean closed;

  OutboxReader(OutboxDatabase database) {
    this.database = database;
  }

  /** The event of a row, or empty if it is not there. */
  synchronized Optional<EventQueue.Entry> at(long row) throws SQLException {
    if (closed) {
      return Optional.empty();
    }
    while (!ahead.isEmpty() && ahead.peek().row() < row) {
      ahead.poll();
    }
    if (ahead.isEmpty() || ahead.peek().row() != row) {
      ahead.clear();
      ahead.addAll(database.read(row, STRETCH));
    }
    EventQueue.Entry first = ahead.peek();
    return first == null || first.row() != row ? Optional.empty() : Optional.of(first);
  }

  /** What the host knew after the last event; empty where it kept nothing. */
  synchronized Optional<byte[]> remembered() throws SQLException {
    return closed ? Optional.empty() : Optional.ofNullable(database.remembered());
  }

  synchronized void close() {
    closed = true;
    ahead.clear();
    try {
      database.close();
    } catch (SQLException e) {
      // it only read
    }
  }
}
