package dev.tankwright.events.outbox;

import dev.tankwright.events.mqtt.EventQueue;
import java.util.List;

/**
 * The last few committed events, so that a publisher that keeps up need not read them back.
 * Thread-safe.
 */
final class Recent {
  private static final int ROOM = 512;

  private final EventQueue.Entry[] ring = new EventQueue.Entry[ROOM];

  synchronized void add(long firstRow, List<EventWithMemory> events) {
    long row = firstRow;
    for (EventWithMemory noted : events) {
      ring[(int) (row % ROOM)] = new EventQueue.Entry(row, noted.event());
      row++;
    }
  }

  /** The event of this row, or null if it is not among the last. */
  synchronized EventQueue.Entry at(long row) {
    EventQueue.Entry entry = ring[(int) (row % ROOM)];
    return entry != null && entry.row() == row ? entry : null;
  }
}
