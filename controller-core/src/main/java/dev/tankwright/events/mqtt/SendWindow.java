package dev.tankwright.events.mqtt;

import java.util.Map;

/** Which event goes next over one connection, and how many of it are on their way. One thread. */
final class SendWindow {
  private final Outstanding outstanding;
  private final int size;
  private long cursor;
  private int inFlight;

  SendWindow(Outstanding outstanding, int size) {
    this.outstanding = outstanding;
    this.size = size;
  }

  /** A new connection owes everything that is outstanding, from the oldest on. */
  void restart() {
    cursor = 0;
    inFlight = 0;
  }

  /** Takes the next event to send, or returns null if there is none or no room. */
  Map.Entry<Long, OutgoingEvent> next() {
    Map.Entry<Long, OutgoingEvent> next = inFlight < size ? outstanding.from(cursor) : null;
    if (next != null) {
      inFlight++;
      cursor = next.getKey() + 1;
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
