package dev.tankwright.events.mqtt;

/** Which event goes next over one connection, and how many of it are on their way. One thread. */
final class SendWindow {
  private final EventQueue queue;
  private final int size;
  private long cursor;
  private int inFlight;

  SendWindow(EventQueue queue, int size) {
    this.queue = queue;
    this.size = size;
  }

  /** A new connection owes everything that is outstanding, from the oldest on. */
  void restart() {
    cursor = 0;
    inFlight = 0;
  }

  /** Takes the next event to send, or returns null if there is none or no room. */
  EventQueue.Entry next() {
    EventQueue.Entry next = inFlight < size ? queue.from(cursor) : null;
    if (next != null) {
      inFlight++;
      cursor = next.row() + 1;
    }
    return next;
  }

  void acknowledged() {
    inFlight--;
  }

  boolean isEmpty() {
    return inFlight == 0;
  }
}
