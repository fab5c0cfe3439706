package dev.tankwright.record;

import java.sql.SQLException;
import java.util.Optional;

/**
 * How far a device's chain is recorded: the row that outlives a recorder. Not thread-safe; the rows
 * are read anew for each batch.
 */
final class RecordedChain {
  final String device;
  long first;
  long last;
  String lastChain;
  long doubled;

  RecordedChain(String device, long first, long last, String lastChain, long doubled) {
    this.device = device;
    this.first = first;
    this.last = last;
    this.lastChain = lastChain;
    this.doubled = doubled;
  }

  static Optional<RecordedChain> load(Sql sql, String device) throws SQLException {
    return sql.first(
        "SELECT device, first_sequence, last_sequence, last_chain, doubled FROM device"
            + " WHERE device = ?",
        row ->
            new RecordedChain(
                row.getString(1), row.getLong(2), row.getLong(3), row.getString(4), row.getLong(5)),
        device);
  }

  void store(Sql sql) throws SQLException {
    sql.update(
        "INSERT INTO device (device, first_sequence, last_sequence, last_chain, doubled)"
            + " VALUES (?, ?, ?, ?, ?) ON CONFLICT (device) DO UPDATE SET"
            + " first_sequence = excluded.first_sequence, last_sequence = excluded.last_sequence,"
            + " last_chain = excluded.last_chain, doubled = excluded.doubled",
        device,
        first,
        last,
        lastChain,
        doubled);
  }
}
