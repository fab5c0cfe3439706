package dev.tankwright.events.outbox;

import dev.tankwright.events.mqtt.EventQueue;
import dev.tankwright.events.mqtt.OutgoingEvent;
import java.nio.file.Path;
import java.sql.SQLException;
import java.time.Duration;
import java.time.InstantSource;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicBoolean;

/**
 * A device's events on their way out, kept in a file. An event exists once it is committed, may be
 * sent only then, and is pending until the broker has acknowledged it: over crashes, power cuts and
 * outages. Rows are numbered from 1 without a gap.
 *
 * <p>A full disk stops nothing: events wait in memory, {@link #trouble} says so, and they are
 * committed once there is room. When too many wait, {@link #append} refuses and {@link #hasRoom}
 * says it beforehand: whoever drains the controller's ring of notices leaves them there then, and
 * the ring reports by itself what it could not hold.
 *
 * <p>Thread-safe.
 */
public final class Outbox implements EventQueue, AutoCloseable {
  static final String ACKNOWLEDGED = "acknowledged";

  private static final String SESSION = "session";
  private static final Duration CLOSE_LIMIT = Duration.ofSeconds(2);

  private final Path file;
  private final OwnedFile files;
  private final OutboxDatabase database;
  private final OutboxReader reader;
  private final PendingEvents waiting;
  private final Acknowledged acknowledged;
  private final OutboxProblems troubles;
  private final Recent recent = new Recent();
  private final OutboxWriter writer;
  private final AtomicBoolean closed = new AtomicBoolean();
  private final long session;
  private volatile Runnable listener = () -> {};

  private Outbox(
      Path file,
      OutboxSettings settings,
      OwnedFile files,
      OutboxDatabase database,
      OutboxReader reader,
      InstantSource wallClock)
      throws SQLException, OutboxException {
    this.file = file;
    this.files = files;
    this.database = database;
    this.reader = reader;
    troubles = new OutboxProblems(file, settings);
    long last = checkedLast();
    acknowledged = new Acknowledged(Math.min(last, database.kept(ACKNOWLEDGED, 0)));
    session = countedSession();
    database.limit(settings.mostBytes());
    waiting = new PendingEvents(settings.waitingEvents());
    writer =
        new OutboxWriter(
            database,
            settings,
            waiting,
            acknowledged,
            recent,
            wallClock,
            troubles,
            () -> listener.run(),
            last);
  }

  /**
   * Opens an outbox, or makes a new one that only its owner can read.
   *
   * @param wallClock tells when an event was committed, for retention by age and nothing else
   * @throws OutboxException if the file is in use, is damaged, is none, or cannot be made
   */
  public static Outbox open(Path file, OutboxSettings settings, InstantSource wallClock)
      throws OutboxException {
    OwnedFile files = OwnedFile.open("the outbox", file);
    OutboxDatabase database = null;
    OutboxDatabase reading = null;
    try {
      database = OutboxDatabase.writer(file);
      reading = OutboxDatabase.reader(file);
      Outbox outbox =
          new Outbox(file, settings, files, database, new OutboxReader(reading), wallClock);
      Thread thread = new Thread(outbox.writer, "outbox " + file.getFileName());
      thread.setDaemon(true);
      thread.start();
      return outbox;
    } catch (SQLException | OutboxException e) {
      closeAll(reading, database, files);
      throw e instanceof OutboxException known ? known : unusable(file, e);
    }
  }

  private static OutboxException unusable(Path file, Exception e) {
    return new OutboxException(
        "the outbox "
            + file
            + " cannot be used ("
            + e.getMessage()
            + "); if it is damaged, move it away for analysis and start a new one",
        e);
  }

  private long checkedLast() throws SQLException, OutboxException {
    long first = database.number("SELECT MIN(row) FROM event");
    long last = database.number("SELECT MAX(row) FROM event");
    long count = database.number("SELECT COUNT(*) FROM event");
    if (count != 0 && count != last - first + 1) {
      throw new OutboxException(
          "the outbox %s holds %d events between %d and %d, so some are missing; move it away for analysis and start a new one"
              .formatted(file, count, first, last));
    }
    return last;
  }

  private long countedSession() throws SQLException {
    long next = database.kept(SESSION, 0) + 1;
    try {
      database.transaction(() -> database.keep(SESSION, next));
    } catch (SQLException e) {
      if (!OutboxProblems.isFull(e)) {
        throw e;
      }
      troubles.committing(e);
    }
    return next;
  }

  /**
   * Puts one event behind those before and returns at once; it is committed soon.
   *
   * @return false if it was refused because too many wait already; it is not kept then
   * @throws IllegalStateException after {@link #close}
   */
  public boolean append(OutgoingEvent event) {
    return append(event, null);
  }

  /**
   * The same, with what the host knows right after the event. It is committed together with the
   * event, so that neither can be newer than the other, and {@link #memory} gives it back.
   *
   * @param memory the host's memory in a form of its own; not copied, so leave it alone; null for
   *     none, which then stands in for any before
   */
  public boolean append(OutgoingEvent event, byte[] memory) {
    if (closed.get()) {
      throw new IllegalStateException(
          "event " + event.id() + " came after the outbox was closed; append before closing");
    }
    return waiting.offer(new EventWithMemory(event, memory));
  }

  /** True when {@link #append} would take at least one more event. */
  public boolean hasRoom() {
    return waiting.hasRoom();
  }

  /** Where it is kept. */
  Path file() {
    return file;
  }

  /** How often this outbox has been opened, this time included: the number of the session. */
  public long session() {
    return session;
  }

  /** The last committed event, from which the device's sequence and chain go on. */
  public Optional<OutgoingEvent> last() throws OutboxException {
    try {
      long row = writer.committed();
      return row == 0 ? Optional.empty() : reader.at(row).map(EventQueue.Entry::event);
    } catch (SQLException e) {
      throw unusable(file, e);
    }
  }

  /**
   * What the host knew right after the last committed event; empty where it gave nothing with it.
   * Stands still only while nothing waits, as right after opening.
   */
  public Optional<byte[]> memory() throws OutboxException {
    try {
      return reader.remembered();
    } catch (SQLException e) {
      throw unusable(file, e);
    }
  }

  /** How the outbox fares. */
  public OutboxHealth health() {
    return new OutboxHealth(
        writer.committed(),
        acknowledged.mark(),
        waiting.size(),
        waiting.refused(),
        troubles.words());
  }

  @Override
  public Entry from(long row) {
    long owed = acknowledged.firstOwed(row);
    if (owed > writer.committed()) {
      return null;
    }
    Entry entry = recent.at(owed);
    try {
      return entry != null ? entry : reader.at(owed).orElse(null);
    } catch (SQLException e) {
      // asked again with the next acknowledgement or commit, or after the next connect
      troubles.committing(e);
      return null;
    }
  }

  @Override
  public void acknowledge(long row) {
    long before = acknowledged.mark();
    acknowledged.add(row);
    if (before != acknowledged.mark()) {
      writer.markMoved(before);
    }
  }

  @Override
  public boolean isDrained() {
    return waiting.size() == 0 && acknowledged.mark() == writer.committed();
  }

  @Override
  public long acknowledged() {
    return acknowledged.count();
  }

  @Override
  public List<String> undelivered() {
    List<String> ids = new ArrayList<>();
    List<String> uncommitted = waiting.ids();
    for (Entry entry = from(0); entry != null; entry = from(entry.row() + 1)) {
      ids.add(entry.event().id());
    }
    ids.addAll(uncommitted);
    return ids;
  }

  @Override
  public String trouble() {
    return troubles.words();
  }

  @Override
  public void onNews(Runnable told) {
    listener = told;
  }

  /**
   * Commits what waits, if that can be done soon, and closes the file. What could not be committed
   * stays counted in {@link #health}.
   */
  @Override
  public void close() {
    if (closed.compareAndSet(false, true)) {
      writer.stop(CLOSE_LIMIT);
      reader.close();
      closeAll(database, files);
    }
  }

  private static void closeAll(AutoCloseable... all) {
    for (AutoCloseable one : all) {
      try {
        if (one != null) {
          one.close();
        }
      } catch (SQLException e) {
        // everything that was committed is safe; the system closes the rest
      } catch (Exception e) {
        throw new IllegalStateException(e);
      }
    }
  }
}
