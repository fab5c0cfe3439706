package dev.tankwright.events.outbox;

import java.util.TreeSet;

/**
 * Which rows have been acknowledged: all up to a mark, and some beyond it that came out of order.
 * Thread-safe.
 */
final class Acknowledged {
  private final TreeSet<Long> beyond = new TreeSet<>();
  private long mark;
  private long count;

  Acknowledged(long mark) {
    this.mark = mark;
  }

  synchronized void add(long row) {
    if (row <= mark || !beyond.add(row)) {
      return;
    }
    count++;
    while (!beyond.isEmpty() && beyond.first() == mark + 1) {
      beyond.pollFirst();
      mark++;
    }
  }

  /** Every row up to this one has been acknowledged. */
  synchronized long mark() {
    return mark;
  }

  /** How many different rows have been acknowledged since this was made. */
  synchronized long count() {
    return count;
  }

  /** The first row at this one or later that is still owed. */
  synchronized long firstOwed(long row) {
    long owed = Math.max(row, mark + 1);
    while (beyond.contains(owed)) {
      owed++;
    }
    return owed;
  }

  synchronized boolean isOwed(long row) {
    return row > mark && !beyond.contains(row);
  }
}
