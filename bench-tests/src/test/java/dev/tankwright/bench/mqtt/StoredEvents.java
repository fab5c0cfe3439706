package dev.tankwright.bench.mqtt;

import dev.tankwright.events.mqtt.Credentials;
import dev.tankwright.extent.Needs;
import dev.tankwright.extent.Service;
import dev.tankwright.record.BatchResult;
import dev.tankwright.record.Database;
import dev.tankwright.record.EventStore;
import dev.tankwright.record.Finding;
import dev.tankwright.record.FindingKind;
import dev.tankwright.record.PostgresDatabase;
import dev.tankwright.record.Records;
import dev.tankwright.record.SqliteDatabase;
import dev.tankwright.record.StoreException;
import dev.tankwright.record.Verification;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.io.TempDir;

/** A recorder's database on a file and on a server, and what is in it, for the tests of a class. */
@Timeout(120)
@Needs(Service.POSTGRESQL)
abstract class StoredEvents {
  static final String BATH = "bath-1";
  private static final Instant NOW = Instant.parse("2026-03-02T08:00:00Z");

  /** Where events are stored. */
  enum Kind {
    FILE,
    SERVER
  }

  @RegisterExtension static final PostgresServer SERVER = new PostgresServer();

  @TempDir private Path folder;

  final CraftedEvents bath = new CraftedEvents(BATH);
  Database database;
  RecordedRows rows;
  EventStore store;

  final void open(Kind kind) throws Exception {
    if (kind == Kind.FILE) {
      Path file = folder.resolve("facility.db");
      database = new SqliteDatabase(file);
      store = store();
      rows = RecordedRows.of(file);
    } else {
      String url = SERVER.newDatabase();
      Credentials credentials = Credentials.of(PostgresServer.USER, PostgresServer.PASSWORD);
      database = PostgresDatabase.of(url, Optional.empty(), Optional.of(credentials));
      store = store();
      rows = RecordedRows.of(url);
    }
  }

  final EventStore store() throws StoreException {
    return EventStore.open(database, () -> NOW, new Random(1));
  }

  @AfterEach
  void close() throws Exception {
    if (store != null) {
      store.close();
    }
    rows.close();
  }

  static List<FindingKind> kinds(BatchResult noted) {
    return noted.found().stream().map(Finding::kind).toList();
  }

  final List<String> open() throws Exception {
    return rows.texts(
        "SELECT kind || ' ' || first_sequence || ' ' || last_sequence FROM finding"
            + " WHERE closed IS NULL ORDER BY first_sequence, kind");
  }

  final List<Finding> verified() throws Exception {
    try (Records records = Records.open(database)) {
      return Verification.of(records, BATH).findings();
    }
  }

  static List<String> texts(List<Finding> findings) {
    return findings.stream().map(Finding::text).toList();
  }
}
