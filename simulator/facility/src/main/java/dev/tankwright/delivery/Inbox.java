package dev.tankwright.delivery;

import dev.tankwright.events.mqtt.DeviceTopics;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import java.util.function.LongSupplier;

/**
 * What has arrived. The client's callback only puts bytes into a queue; they are read by whoever
 * asks. Thread-safe.
 */
final class Inbox {
  @SuppressWarnings("ArrayRecordComponent") // bytes from the wire, never compared
  private record Arrival(String topic, byte[] payload) {}

  private final BlockingQueue<Arrival> arrivals = new LinkedBlockingQueue<>();
  private final Map<String, ReceivedEvent> first = new LinkedHashMap<>();
  private final Set<String> doubled = new LinkedHashSet<>();
  private final DeviceTopics topics;
  private final LongSupplier nanoTime;
  private int unreadable;
  private String status;

  Inbox(DeviceTopics topics, LongSupplier nanoTime) {
    this.topics = topics;
    this.nanoTime = nanoTime;
  }

  void put(String topic, byte[] payload) {
    arrivals.add(new Arrival(topic, payload));
  }

  /** First arrivals, in order. */
  synchronized List<ReceivedEvent> received() {
    readAll();
    return List.copyOf(first.values());
  }

  /** Ids that came more than once, in the order of the second arrival. */
  synchronized List<String> doubled() {
    readAll();
    return List.copyOf(doubled);
  }

  /** Messages on the events topic that carry no CloudEvents id. */
  synchronized int unreadable() {
    readAll();
    return unreadable;
  }

  synchronized Optional<String> status() {
    readAll();
    return Optional.ofNullable(status);
  }

  /**
   * Waits for these ids.
   *
   * @param idle gives up when none of them has come for so long
   * @param overall gives up then at the latest
   * @return the ids still missing, in order
   */
  synchronized List<String> awaitAll(Collection<String> ids, Duration idle, Duration overall)
      throws InterruptedException {
    Set<String> missing = new LinkedHashSet<>(ids);
    long end = nanoTime.getAsLong() + overall.toNanos();
    long idleEnd = nanoTime.getAsLong() + idle.toNanos();
    while (true) {
      readAll();
      if (missing.removeAll(new HashSet<>(first.keySet()))) {
        idleEnd = nanoTime.getAsLong() + idle.toNanos();
      }
      long now = nanoTime.getAsLong();
      long wait = Math.min(end - now, idleEnd - now);
      if (missing.isEmpty() || wait <= 0) {
        return new ArrayList<>(missing);
      }
      read(arrivals.poll(wait, TimeUnit.NANOSECONDS));
    }
  }

  private void readAll() {
    for (Arrival next = arrivals.poll(); next != null; next = arrivals.poll()) {
      read(next);
    }
  }

  private void read(Arrival arrival) {
    if (arrival == null) {
      return;
    }
    if (arrival.topic().equals(topics.status())) {
      status = new String(arrival.payload(), StandardCharsets.UTF_8);
      return;
    }
    Optional<String> id = EventIds.of(arrival.payload());
    if (id.isEmpty()) {
      unreadable++;
    } else if (first.putIfAbsent(id.get(), new ReceivedEvent(id.get(), arrival.payload()))
        != null) {
      doubled.add(id.get());
    }
  }
}
