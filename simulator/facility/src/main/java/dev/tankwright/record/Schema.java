package dev.tankwright.record;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.random.RandomGenerator;

/**
 * The tables. They are the same in every database but for the type of octets; moments are texts in
 * RFC 3339, UTC, milliseconds, so that text order is time order. A description for readers is in
 * docs/integrator.md.
 */
final class Schema {
  /** The version that this program writes and reads. */
  static final int VERSION = 1;

  private static final String RECORDER = "recorder";

  /** What makes the tables; {@code OCTETS} stands for the type of octets. */
  static final List<String> TABLES =
      List.of(
          "CREATE TABLE recorder (schema_version BIGINT NOT NULL, client_id TEXT NOT NULL)",
          "CREATE TABLE device (device TEXT PRIMARY KEY, first_sequence BIGINT NOT NULL,"
              + " last_sequence BIGINT NOT NULL, last_chain TEXT NOT NULL, doubled BIGINT NOT"
              + " NULL)",
          "CREATE TABLE event (device TEXT NOT NULL, sequence BIGINT NOT NULL, type TEXT NOT NULL,"
              + " subject TEXT NOT NULL, time TEXT NOT NULL, chain TEXT NOT NULL,"
              + " payload OCTETS NOT NULL, recorded TEXT NOT NULL, PRIMARY KEY (device, sequence))",
          "CREATE INDEX event_subject ON event (device, subject)",
          "CREATE TABLE cycle (device TEXT NOT NULL, cycle BIGINT NOT NULL, programme TEXT,"
              + " started TEXT, ended TEXT, outcome TEXT, verdict TEXT, interruptions BIGINT,"
              + " faults TEXT, record_sequence BIGINT, PRIMARY KEY (device, cycle))",
          "CREATE TABLE finding (device TEXT NOT NULL, kind TEXT NOT NULL, first_sequence BIGINT"
              + " NOT NULL, last_sequence BIGINT NOT NULL, noticed TEXT NOT NULL, closed TEXT,"
              + " PRIMARY KEY (device, kind, first_sequence))",
          "CREATE TABLE aside (topic TEXT NOT NULL, fingerprint TEXT NOT NULL, payload OCTETS NOT"
              + " NULL, reason TEXT NOT NULL, recorded TEXT NOT NULL,"
              + " PRIMARY KEY (topic, fingerprint))");

  private static final Set<String> NAMES =
      Set.of(RECORDER, "device", "event", "cycle", "finding", "aside");

  private Schema() {}

  /**
   * Makes the tables where there are none.
   *
   * @param chance gives a new database its client id, which names its session at the broker
   */
  static void prepare(Sql sql, Database database, RandomGenerator chance)
      throws SQLException, StoreException {
    refuseOthers(sql, database.name());
    if (tables(sql).contains(RECORDER)) {
      return;
    }
    database.begin(sql);
    try {
      for (String table : TABLES) {
        sql.run(table.replace("OCTETS", database.octets()));
      }
      // MQTT 3.1.1, 3.1.3.1: every broker takes 23 characters
      String clientId = "tankwright-rec-%08x".formatted(chance.nextInt());
      sql.update("INSERT INTO recorder VALUES (?, ?)", (long) VERSION, clientId);
      database.commit(sql);
    } catch (SQLException e) {
      database.rollback(sql);
      throw e;
    }
  }

  /**
   * Refuses what this program does not know: tables of something else, or of another version.
   *
   * @param name the database in messages
   */
  static void refuseOthers(Sql sql, String name) throws SQLException, StoreException {
    Set<String> there = tables(sql);
    if (there.contains(RECORDER)) {
      long version = sql.number("SELECT MAX(schema_version) FROM recorder");
      if (version != VERSION) {
        throw StoreException.bad(
            name
                + " has schema version "
                + version
                + ", but this program knows version "
                + VERSION
                + "; use the program that wrote it, or another database");
      }
      return;
    }
    there.retainAll(NAMES);
    if (!there.isEmpty()) {
      throw StoreException.bad(
          name
              + " holds a table '"
              + there.iterator().next()
              + "' of another program; name another database");
    }
  }

  /** Refuses a database in which nothing was ever recorded. */
  static void require(Sql sql, String name) throws SQLException, StoreException {
    refuseOthers(sql, name);
    if (!tables(sql).contains(RECORDER)) {
      throw StoreException.bad(
          name + " is not a recorder's database; name the one that 'tankwright record' writes");
    }
  }

  private static Set<String> tables(Sql sql) throws SQLException {
    Set<String> names = new TreeSet<>();
    String schema = sql.connection().getSchema();
    String[] kinds = {"TABLE"};
    try (ResultSet all = sql.connection().getMetaData().getTables(null, schema, "%", kinds)) {
      while (all.next()) {
        names.add(all.getString("TABLE_NAME").toLowerCase(Locale.ROOT));
      }
    }
    return names;
  }
}
