package dev.tankwright.events.outbox;

import java.sql.SQLException;

/**
 * Takes the oldest acknowledged events away, by age and by size. An event that is still owed never
 * goes, nor does the last one, from which the device's sequence and chain go on. One thread.
 */
final class Retention {
  private static final int STRETCH = 500;

  private final OutboxDatabase database;
  private final OutboxSettings settings;

  Retention(OutboxDatabase database, OutboxSettings settings) {
    this.database = database;
    this.settings = settings;
  }

  /**
   * Removes what may go, each stretch in a commit of its own.
   *
   * @param acknowledged row up to which everything is acknowledged, as the file itself says
   * @param last row of the last event
   * @param nowMillis the wall clock's time
   */
  void apply(long acknowledged, long last, long nowMillis) throws SQLException {
    long free = Math.min(acknowledged, last - 1);
    boolean more = true;
    while (more) {
      more = removed(endOfOld(free, nowMillis)) || (isLarge() && removed(endOfStretch(free)));
    }
    database.run("PRAGMA incremental_vacuum(" + STRETCH + ")");
  }

  /** Removes a stretch whatever its age; returns whether there was any. */
  boolean makeRoom(long acknowledged, long last) throws SQLException {
    return removed(endOfStretch(Math.min(acknowledged, last - 1)));
  }

  private boolean removed(long end) throws SQLException {
    return end > 0 && database.run("DELETE FROM event WHERE row <= " + end) > 0;
  }

  // Only from the front: the clock may have jumped, but what remains must have no gap.
  private long endOfOld(long free, long nowMillis) throws SQLException {
    long limit = nowMillis - settings.keepFor().toMillis();
    long young =
        database.number(
            "SELECT row FROM (SELECT row, committed FROM event ORDER BY row LIMIT %d) WHERE row > %d OR committed > %d ORDER BY row LIMIT 1"
                .formatted(STRETCH, free, limit));
    return young > 0 ? young - 1 : endOfStretch(free);
  }

  private long endOfStretch(long free) throws SQLException {
    return Math.min(free, database.number("SELECT MIN(row) FROM event") + STRETCH - 1);
  }

  private boolean isLarge() throws SQLException {
    long pages = database.number("PRAGMA page_count") - database.number("PRAGMA freelist_count");
    return pages * database.number("PRAGMA page_size") > settings.keepBytes();
  }
}
