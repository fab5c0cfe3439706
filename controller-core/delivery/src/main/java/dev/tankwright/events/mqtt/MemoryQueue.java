package dev.tankwright.events.mqtt;

import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentSkipListMap;
import java.util.concurrent.atomic.AtomicLong;

/** A queue that lasts as long as its process, for what need not outlive it. Thread-safe. */
public final class MemoryQueue implements EventQueue {
  private final ConcurrentSkipListMap<Long, OutgoingEvent> events = new ConcurrentSkipListMap<>();
  private final AtomicLong acknowledged = new AtomicLong();
  private volatile Runnable listener = () -> {};
  private long given;

  /** Puts one event behind those before and returns at once. */
  public void add(OutgoingEvent event) {
    synchronized (this) {
      events.put(++given, event);
    }
    listener.run();
  }

  @Override
  public Entry from(long row) {
    Map.Entry<Long, OutgoingEvent> next = events.ceilingEntry(row);
    return next == null ? null : new Entry(next.getKey(), next.getValue());
  }

  @Override
  public void acknowledge(long row) {
    if (events.remove(row) != null) {
      acknowledged.incrementAndGet();
    }
  }

  @Override
  public boolean isDrained() {
    return events.isEmpty();
  }

  @Override
  public long acknowledged() {
    return acknowledged.get();
  }

  @Override
  public List<String> undelivered() {
    return events.values().stream().map(OutgoingEvent::id).toList();
  }

  @Override
  public String trouble() {
    return null;
  }

  @Override
  public void onNews(Runnable told) {
    listener = told;
  }
}
