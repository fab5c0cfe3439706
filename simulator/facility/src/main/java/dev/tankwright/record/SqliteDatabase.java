package dev.tankwright.record;

import dev.tankwright.events.outbox.OutboxException;
import dev.tankwright.events.outbox.OwnedFile;
import dev.tankwright.sqlite.SqliteTransaction;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.SQLException;
import org.sqlite.SQLiteConfig;
import org.sqlite.SQLiteErrorCode;

/**
 * A file of SQLite in its write-ahead mode with full synchronisation. Only its owner may read or
 * write it, and one recorder at a time has it.
 *
 * @param file where it is
 */
public record SqliteDatabase(Path file) implements Database {
  private static final int BUSY_MILLIS = 2_000;

  @Override
  public String name() {
    return "the database " + file;
  }

  @Override
  public Sql write() throws SQLException, StoreException {
    OwnedFile owned = own();
    Sql sql = null;
    try {
      sql = new Sql(config().createConnection("jdbc:sqlite:" + file), owned);
      Schema.refuseOthers(sql, name()); // before anything of it is changed
      sql.run("PRAGMA journal_mode = WAL");
      // NORMAL can lose the last commits of the write-ahead log in a power cut (sqlite.org/pragma)
      sql.run("PRAGMA synchronous = FULL");
      return sql;
    } catch (SQLException e) {
      close(sql, owned);
      throw notOne(e);
    } catch (StoreException e) {
      close(sql, owned);
      throw e;
    }
  }

  private static void close(Sql sql, OwnedFile owned) {
    if (sql == null) {
      owned.close();
    } else {
      sql.close();
    }
  }

  private OwnedFile own() throws StoreException {
    try {
      return OwnedFile.open("the database", file);
    } catch (OutboxException e) {
      throw StoreException.bad(e.getMessage());
    }
  }

  @Override
  public Sql read() throws SQLException, StoreException {
    if (!Files.isRegularFile(file)) {
      throw StoreException.bad(
          "there is no database " + file + "; name the one that 'tankwright record' writes");
    }
    SQLiteConfig config = config();
    config.setReadOnly(true);
    Sql sql = new Sql(config.createConnection("jdbc:sqlite:" + file), () -> {});
    try {
      sql.number("PRAGMA schema_version");
      return sql;
    } catch (SQLException e) {
      sql.close();
      throw notOne(e);
    }
  }

  private static SQLiteConfig config() {
    SQLiteConfig config = new SQLiteConfig();
    config.setBusyTimeout(BUSY_MILLIS);
    return config;
  }

  private SQLException notOne(SQLException e) throws StoreException {
    if (e.getErrorCode() == SQLiteErrorCode.SQLITE_NOTADB.code) {
      throw StoreException.bad(file + " is not an SQLite database; name another file");
    }
    return e;
  }

  @Override
  public String octets() {
    return "BLOB";
  }

  @Override
  public void begin(Sql sql) throws SQLException {
    SqliteTransaction.begin(sql.connection());
  }

  @Override
  public void commit(Sql sql) throws SQLException {
    SqliteTransaction.commit(sql.connection());
  }

  @Override
  public void rollback(Sql sql) {
    SqliteTransaction.rollback(sql.connection());
  }

  @Override
  public String advice(SQLException e) {
    int code = e.getErrorCode() & 0xFF; // the rest is SQLite's extended code
    if (code == SQLiteErrorCode.SQLITE_BUSY.code || code == SQLiteErrorCode.SQLITE_LOCKED.code) {
      return "another program has locked it; end its transaction";
    }
    if (code == SQLiteErrorCode.SQLITE_FULL.code || code == SQLiteErrorCode.SQLITE_IOERR.code) {
      return "free some space on its disk, and check the disk";
    }
    return "check the file and its folder; if it is damaged, move it away for analysis";
  }
}
