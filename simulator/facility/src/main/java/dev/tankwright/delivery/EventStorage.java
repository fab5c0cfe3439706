package dev.tankwright.delivery;

import dev.tankwright.events.mqtt.EventQueue;
import dev.tankwright.events.mqtt.MemoryQueue;
import dev.tankwright.events.mqtt.OutgoingEvent;
import dev.tankwright.events.outbox.Outbox;

/** Where a run's events are kept until they are acknowledged. Thread-safe. */
interface EventStorage {
  /** What the publisher sends from. */
  EventQueue queue();

  /** Takes the next event; false if it was refused and lost, see {@link #trouble}. */
  boolean add(OutgoingEvent event, byte[] memory);

  /** The present problem as a message for people, or null. */
  String trouble();

  /** Ends it; nothing is added or sent afterwards. */
  void close();

  /** In the outbox of the settings, or in memory if they have none. */
  static EventStorage of(DeliverySettings settings) {
    return settings
        .outbox()
        .<EventStorage>map(InOutbox::new)
        .orElseGet(() -> new InMemory(new MemoryQueue()));
  }

  /** In memory alone. */
  record InMemory(MemoryQueue queue) implements EventStorage {
    @Override
    public boolean add(OutgoingEvent event, byte[] memory) {
      queue.add(event);
      return true;
    }

    @Override
    public String trouble() {
      return null;
    }

    @Override
    public void close() {}
  }

  /** In a file. */
  record InOutbox(Outbox queue) implements EventStorage {
    @Override
    public boolean add(OutgoingEvent event, byte[] memory) {
      return queue.append(event, memory);
    }

    @Override
    public String trouble() {
      return queue.trouble();
    }

    @Override
    public void close() {
      queue.close();
    }
  }
}
