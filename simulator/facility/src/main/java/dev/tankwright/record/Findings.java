package dev.tankwright.record;

import java.sql.SQLException;
import java.util.List;

/** The rows of findings: each stands once, and a gap is closed when it has been filled. */
final class Findings {
  private final Sql sql;
  private final String now;
  private final BatchResult noted;

  /**
   * For one batch.
   *
   * @param now when it is taken, RFC 3339
   */
  Findings(Sql sql, String now, BatchResult noted) {
    this.sql = sql;
    this.now = now;
    this.noted = noted;
  }

  /** Notes what was found, unless it has been noted before. */
  void add(Finding finding) throws SQLException {
    int added =
        sql.update(
            "INSERT INTO finding (device, kind, first_sequence, last_sequence, noticed)"
                + " VALUES (?, ?, ?, ?, ?) ON CONFLICT (device, kind, first_sequence) DO NOTHING",
            finding.device(),
            finding.kind().name(),
            finding.first(),
            finding.last(),
            now);
    if (added > 0) {
      noted.addFound(finding);
    }
  }

  /** An event has come late: closes each gap around it of which nothing is missing any more. */
  void filled(String device, long number) throws SQLException {
    List<Finding> open =
        sql.list(
            "SELECT first_sequence, last_sequence FROM finding WHERE device = ? AND kind = 'GAP'"
                + " AND closed IS NULL AND first_sequence <= ? AND last_sequence >= ?",
            row -> Finding.gap(device, row.getLong(1), row.getLong(2)),
            device,
            number,
            number);
    for (Finding gap : open) {
      long there =
          sql.number(
              "SELECT COUNT(*) FROM event WHERE device = ? AND sequence BETWEEN ? AND ?",
              device,
              gap.first(),
              gap.last());
      if (there == gap.last() - gap.first() + 1) {
        close(gap);
      }
    }
  }

  private void close(Finding gap) throws SQLException {
    sql.update(
        "UPDATE finding SET closed = ? WHERE device = ? AND kind = 'GAP' AND first_sequence = ?",
        now,
        gap.device(),
        gap.first());
    noted.addClosed(gap);
  }
}
