package dev.tankwright.record;

import dev.tankwright.events.ChainedEvent;
import dev.tankwright.events.EventType;
import java.io.IOException;
import java.sql.SQLException;
import java.util.Map;
import java.util.Optional;

/** The rows of cycles, drawn from the events as they are stored, in whatever order they come. */
final class CycleTable {
  private static final String BEGUN =
      "INSERT INTO cycle (device, cycle, programme, started) VALUES (?, ?, ?, ?)"
          + " ON CONFLICT (device, cycle) DO NOTHING";
  private static final String RECORDED =
      "INSERT INTO cycle (device, cycle, programme, started, ended, outcome, verdict,"
          + " interruptions, faults, record_sequence) VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?)"
          + " ON CONFLICT (device, cycle) DO UPDATE SET programme = excluded.programme,"
          + " started = excluded.started, ended = excluded.ended, outcome = excluded.outcome,"
          + " verdict = excluded.verdict, interruptions = excluded.interruptions,"
          + " faults = excluded.faults, record_sequence = excluded.record_sequence";

  private final Sql sql;

  CycleTable(Sql sql) {
    this.sql = sql;
  }

  /** Notes that a cycle has begun, if this event says so. */
  void begun(String device, ChainedEvent event) throws SQLException {
    if (!event.type().equals(EventType.CYCLE_STARTED.type())) {
      return;
    }
    try {
      Map<String, Object> data = JsonData.members(event.payload());
      long cycle = CycleReport.number(data, "cycle");
      sql.update(BEGUN, device, cycle, CycleReport.text(data, "programme"), event.time());
    } catch (IOException | IllegalArgumentException e) {
      // the event itself is stored; without these two there is nothing to list
    }
  }

  /** True for an event that should carry a record. */
  static boolean isRecord(ChainedEvent event) {
    return event.type().equals(EventType.CYCLE_RECORDED.type());
  }

  /** Stores the record that this event carries; empty when it cannot be read. */
  Optional<CycleReport> recorded(String device, ChainedEvent event) throws SQLException {
    Optional<CycleReport> report = CycleReport.read(device, event);
    if (report.isPresent()) {
      CycleReport cycle = report.get();
      sql.update(
          RECORDED,
          device,
          cycle.cycle(),
          cycle.programme(),
          cycle.started(),
          cycle.ended(),
          cycle.outcome(),
          cycle.verdict(),
          cycle.interruptions(),
          cycle.faults(),
          cycle.sequence());
    }
    return report;
  }
}
