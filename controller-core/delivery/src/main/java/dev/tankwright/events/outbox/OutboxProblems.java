package dev.tankwright.events.outbox;

import java.nio.file.Path;
import java.sql.SQLException;
import org.sqlite.SQLiteErrorCode;

/** Reasons why an outbox cannot commit, as messages for people. Thread-safe. */
final class OutboxProblems {
  private final Path file;
  private final OutboxSettings settings;
  private volatile String words;

  OutboxProblems(Path file, OutboxSettings settings) {
    this.file = file;
    this.settings = settings;
  }

  /** A commit has failed; returns whether that is news. */
  boolean committing(SQLException error) {
    String now = isFull(error) ? full() : other(error);
    boolean isNew = !now.equals(words);
    words = now;
    return isNew;
  }

  void over() {
    words = null;
  }

  /** The present trouble, or null. */
  String words() {
    return words;
  }

  static boolean isFull(SQLException error) {
    return primary(error) == SQLiteErrorCode.SQLITE_FULL.code;
  }

  // the upper bytes of an extended code tell more of the same error (sqlite.org/rescode)
  private static int primary(SQLException error) {
    return error.getErrorCode() & 0xFF;
  }

  private String full() {
    String limit =
        settings.mostBytes() == 0 ? "" : " or its limit of " + settings.mostBytes() + " bytes";
    return "the disk of the outbox "
        + file
        + limit
        + " is full; events wait in memory until there is space: free some space, or let the broker"
        + " acknowledge the pending events";
  }

  private String other(SQLException error) {
    return "the outbox "
        + file
        + " cannot be written ("
        + error.getMessage()
        + "); events wait in memory: check the disk";
  }
}
