package dev.tankwright.events.outbox;

import java.time.Duration;
import java.util.ArrayDeque;
import java.util.List;
import java.util.concurrent.locks.Condition;
import java.util.concurrent.locks.ReentrantLock;

/** Events in memory that are not committed yet, in order and bounded in number. Thread-safe. */
final class PendingEvents {
  private final ReentrantLock lock = new ReentrantLock();
  private final Condition changed = lock.newCondition();
  private final ArrayDeque<EventWithMemory> events = new ArrayDeque<>();
  private final int room;
  private boolean woken;
  private long refused;

  PendingEvents(int room) {
    this.room = room;
  }

  /** Takes one more and returns at once; false if there is no room. */
  boolean offer(EventWithMemory event) {
    lock.lock();
    try {
      if (events.size() >= room) {
        refused++;
        return false;
      }
      events.add(event);
      changed.signal();
      return true;
    } finally {
      lock.unlock();
    }
  }

  /**
   * The first events, which stay until they are {@link #taken}.
   *
   * @param most how many at most
   * @param idle how long to wait for the first; {@link #wake} ends that early
   * @param gather how long to wait for more once there is one
   */
  List<EventWithMemory> first(int most, Duration idle, Duration gather)
      throws InterruptedException {
    lock.lock();
    try {
      await(1, idle.toNanos());
      if (!events.isEmpty()) {
        await(most, gather.toNanos());
      }
      return events.stream().limit(most).toList();
    } finally {
      woken = false;
      lock.unlock();
    }
  }

  private void await(int count, long nanos) throws InterruptedException {
    long left = nanos;
    while (events.size() < count && !woken && left > 0) {
      left = changed.awaitNanos(left);
    }
  }

  void taken(int count) {
    lock.lock();
    try {
      for (int i = 0; i < count; i++) {
        events.remove();
      }
    } finally {
      lock.unlock();
    }
  }

  void wake() {
    lock.lock();
    try {
      woken = true;
      changed.signal();
    } finally {
      lock.unlock();
    }
  }

  int size() {
    lock.lock();
    try {
      return events.size();
    } finally {
      lock.unlock();
    }
  }

  boolean hasRoom() {
    return size() < room;
  }

  long refused() {
    lock.lock();
    try {
      return refused;
    } finally {
      lock.unlock();
    }
  }

  List<String> ids() {
    lock.lock();
    try {
      return events.stream().map(noted -> noted.event().id()).toList();
    } finally {
      lock.unlock();
    }
  }
}
