package dev.tankwright.events.mqtt;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentSkipListMap;
import java.util.concurrent.atomic.AtomicInteger;

/**
 * The events given and not yet acknowledged, in order. Thread-safe: callers add, the worker reads
 * and removes, and a report can be made at any moment.
 */
final class Outstanding {
  private final ConcurrentSkipListMap<Long, OutgoingEvent> events = new ConcurrentSkipListMap<>();
  private final AtomicInteger acknowledged = new AtomicInteger();
  private long given;
  private volatile String lastError;

  synchronized void add(OutgoingEvent event) {
    events.put(++given, event);
  }

  /** The first event with at least this sequence number, or null. */
  Map.Entry<Long, OutgoingEvent> from(long sequence) {
    return events.ceilingEntry(sequence);
  }

  /** Counts an acknowledgement; one that comes twice, after a resend, counts once. */
  void acknowledge(long sequence) {
    if (events.remove(sequence) != null) {
      acknowledged.incrementAndGet();
    }
  }

  boolean isEmpty() {
    return events.isEmpty();
  }

  void error(String words) {
    lastError = words;
  }

  PublishReport report() {
    List<String> undelivered = new ArrayList<>();
    events.values().forEach(event -> undelivered.add(event.id()));
    return new PublishReport(acknowledged.get(), undelivered, lastError);
  }
}
