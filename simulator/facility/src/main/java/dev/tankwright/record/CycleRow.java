package dev.tankwright.record;

import java.sql.ResultSet;
import java.sql.SQLException;

/**
 * One row of the list of cycles. What is known only from the record is null until that has come.
 *
 * @param device the device
 * @param cycle the cycle's number within its device
 * @param programme what is run
 * @param started when, RFC 3339
 * @param ended when, RFC 3339, or null
 * @param outcome how it ended, or null
 * @param verdict whether it went as it was set, or null
 * @param interruptions how often it was held, or null
 * @param faults what was latched, separated by spaces, or null
 * @param recordSequence number of the event with the record, or null
 */
public record CycleRow(
    String device,
    long cycle,
    String programme,
    String started,
    String ended,
    String outcome,
    String verdict,
    Long interruptions,
    String faults,
    Long recordSequence) {
  static final String SELECT =
      "SELECT device, cycle, programme, started, ended, outcome, verdict, interruptions, faults,"
          + " record_sequence FROM cycle ";

  static CycleRow read(ResultSet row) throws SQLException {
    return new CycleRow(
        row.getString(1),
        row.getLong(2),
        row.getString(3),
        row.getString(4),
        row.getString(5),
        row.getString(6),
        row.getString(7),
        number(row, 8),
        row.getString(9),
        number(row, 10));
  }

  private static Long number(ResultSet row, int column) throws SQLException {
    long value = row.getLong(column);
    return row.wasNull() ? null : value;
  }

  /** What a row must say when this is the record of its cycle. */
  static CycleRow of(CycleReport report) {
    return new CycleRow(
        report.device(),
        report.cycle(),
        report.programme(),
        report.started(),
        report.ended(),
        report.outcome(),
        report.verdict(),
        report.interruptions(),
        report.faults(),
        report.sequence());
  }

  /** The subject of the cycle's events. */
  public String subject() {
    return "cycle/%04d".formatted(cycle);
  }
}
