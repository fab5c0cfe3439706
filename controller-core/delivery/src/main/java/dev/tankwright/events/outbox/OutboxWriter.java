package dev.tankwright.events.outbox;

import java.sql.SQLException;
import java.time.Duration;
import java.time.InstantSource;
import java.util.List;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * The only thread that writes to an outbox's file: commits waiting events in groups, keeps the
 * acknowledgements, and takes away what may go. What cannot be committed waits and is tried again.
 */
final class OutboxWriter implements Runnable {
  private static final Logger LOG = LoggerFactory.getLogger(OutboxWriter.class);
  private static final Duration IDLE = Duration.ofSeconds(60);
  // how late the file may learn of an acknowledgement while nothing else is written
  private static final Duration ACKNOWLEDGE_WITHIN = Duration.ofMillis(100);
  private static final long RETRY_MILLIS = 250;
  private static final int ROWS_BETWEEN_RETENTION = 500;

  private final OutboxDatabase database;
  private final OutboxSettings settings;
  private final PendingEvents waiting;
  private final Acknowledged acknowledged;
  private final Recent recent;
  private final InstantSource wallClock;
  private final Runnable news;
  private final Retention retention;
  private final CountDownLatch stopping = new CountDownLatch(1);
  private final CountDownLatch ended = new CountDownLatch(1);
  private final OutboxProblems troubles;
  private volatile long committed;
  private volatile boolean abandoned;
  private volatile long saved;
  private long retained;
  private int most;

  OutboxWriter(
      OutboxDatabase database,
      OutboxSettings settings,
      PendingEvents waiting,
      Acknowledged acknowledged,
      Recent recent,
      InstantSource wallClock,
      OutboxProblems troubles,
      Runnable news,
      long committed) {
    this.database = database;
    this.settings = settings;
    this.waiting = waiting;
    this.acknowledged = acknowledged;
    this.recent = recent;
    this.wallClock = wallClock;
    this.troubles = troubles;
    this.news = news;
    this.retention = new Retention(database, settings);
    this.committed = committed;
    saved = acknowledged.mark();
    retained = committed;
    most = settings.groupEvents();
  }

  /** Row of the last committed event. */
  long committed() {
    return committed;
  }

  /** The mark of acknowledgements has moved on from the given one; returns at once. */
  void markMoved(long before) {
    if (before == saved) {
      waiting.wake();
    }
  }

  /** Asks for the end: what waits is still committed, but no longer tried than the limit. */
  void stop(Duration limit) {
    stopping.countDown();
    waiting.wake();
    try {
      if (!ended.await(limit.toNanos(), TimeUnit.NANOSECONDS)) {
        abandoned = true;
        waiting.wake();
        ended.await();
      }
    } catch (InterruptedException e) {
      abandoned = true;
      Thread.currentThread().interrupt();
    }
  }

  @Override
  public void run() {
    try {
      while (!isOver()) {
        turn();
      }
      save();
      retain();
    } catch (InterruptedException e) {
      LOG.warn("the outbox's writer was interrupted; events in memory are not committed");
    } finally {
      ended.countDown();
    }
  }

  private boolean isOver() {
    return stopping.getCount() == 0 && (abandoned || waiting.size() == 0);
  }

  private void turn() throws InterruptedException {
    boolean owesMark = acknowledged.mark() > saved;
    Duration patience = owesMark ? ACKNOWLEDGE_WITHIN : IDLE;
    List<EventWithMemory> group =
        waiting.first(
            most, patience, most < settings.groupEvents() ? Duration.ZERO : settings.groupWait());
    if (!group.isEmpty()) {
      write(group);
    } else if (owesMark) {
      save();
    }
    if (committed - retained >= ROWS_BETWEEN_RETENTION || group.isEmpty()) {
      retain();
    }
  }

  private void write(List<EventWithMemory> group) throws InterruptedException {
    long mark = acknowledged.mark();
    long first = committed + 1;
    try {
      database.transaction(
          () -> {
            database.insert(first, group, wallClock.millis());
            database.keep(Outbox.ACKNOWLEDGED, mark);
            database.remember(group.get(group.size() - 1).memory());
          });
    } catch (SQLException e) {
      most = Math.max(1, group.size() / 2); // a smaller group may still find room
      if (!makesRoom()) {
        tell(troubles.committing(e));
        stopping.await(RETRY_MILLIS, TimeUnit.MILLISECONDS);
      }
      return;
    }
    saved = mark;
    most = Math.min(settings.groupEvents(), 2 * most);
    recent.add(first, group);
    committed = first + group.size() - 1;
    waiting.taken(group.size());
    troubles.over();
    news.run();
  }

  private boolean makesRoom() {
    try {
      save();
      return retention.makeRoom(saved, committed);
    } catch (SQLException e) {
      database.rollback();
      return false;
    }
  }

  private void tell(boolean isNew) {
    if (isNew) {
      LOG.warn("{}", troubles.words());
      news.run();
    }
  }

  private void save() {
    long mark = acknowledged.mark();
    if (mark > saved) {
      try {
        database.transaction(() -> database.keep(Outbox.ACKNOWLEDGED, mark));
        saved = mark;
      } catch (SQLException e) {
        // the same events will be sent once more, with the same ids
      }
    }
  }

  private void retain() {
    retained = committed;
    try {
      retention.apply(saved, committed, wallClock.millis());
    } catch (SQLException e) {
      // what is kept too long does no harm; it is tried again
      database.rollback();
    }
  }
}
