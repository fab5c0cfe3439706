package dev.tankwright.events.mqtt;

import java.util.List;

/**
 * What a publisher has to send: events in order, each kept until the broker has acknowledged it.
 *
 * <p>Threading: {@link #from} and {@link #acknowledge} are called by the publisher's one thread;
 * everything else may be called by any thread.
 */
public interface EventQueue {
  /**
   * One event and its place.
   *
   * @param row counted from 1 in the order of sending; it comes back with the acknowledgement
   * @param event what is sent
   */
  record Entry(long row, OutgoingEvent event) {}

  /** The first event at this row or later that is pending and may be sent now, or null. */
  Entry from(long row);

  /** The broker has acknowledged this row; a second time for the same row changes nothing. */
  void acknowledge(long row);

  /** True when every event that was given has been acknowledged. */
  boolean isDrained();

  /** How many different events have been acknowledged since the queue was opened. */
  long acknowledged();

  /** Ids of the events that were given and not acknowledged, in order. */
  List<String> undelivered();

  /** What keeps events from being kept safely at the moment, in plain words, or null. */
  String trouble();

  /** Whom to tell, on any thread, that there is more to send or that {@link #trouble} changed. */
  void onNews(Runnable listener);
}
