package dev.tankwright.record;

import java.nio.charset.StandardCharsets;
import java.sql.ResultSet;
import java.sql.SQLException;

/**
 * One stored event.
 *
 * @param device the device
 * @param sequence its number
 * @param type the kind of event
 * @param subject the cycle as {@code cycle/0001}; empty outside a cycle
 * @param time when it happened, RFC 3339
 * @param chain its chain value
 * @param payload the bytes as they were received; not copied, so not to be changed
 * @param recorded when it was stored, RFC 3339
 */
@SuppressWarnings("ArrayRecordComponent") // bytes from the wire, never compared
public record EventRow(
    String device,
    long sequence,
    String type,
    String subject,
    String time,
    String chain,
    byte[] payload,
    String recorded) {
  static final String SELECT =
      "SELECT device, sequence, type, subject, time, chain, payload, recorded FROM event ";

  static EventRow read(ResultSet row) throws SQLException {
    return new EventRow(
        row.getString(1),
        row.getLong(2),
        row.getString(3),
        row.getString(4),
        row.getString(5),
        row.getString(6),
        row.getBytes(7),
        row.getString(8));
  }

  /** The event as it was received. */
  public String text() {
    return new String(payload, StandardCharsets.UTF_8);
  }
}
