package dev.tankwright.events.mqtt;

import java.time.Duration;

/**
 * One connection to a broker, from its first attempt to its end; never used for a second attempt.
 *
 * <p>Threading: called by one thread. No method but {@link #goodbye} waits for the network.
 */
interface BrokerLink {
  /** Where a link says what happened. Called on any thread; must return at once and never throw. */
  interface Listener {
    void opened();

    /** The broker has acknowledged what {@link #announce} said. */
    void announced();

    void acknowledged(long row);

    void lost(Throwable cause);
  }

  /** Starts connecting and returns; the listener hears {@code opened} or {@code lost}. */
  void open(Listener listener);

  /**
   * Says "online" on the retained status topic; the listener hears {@code announced} or {@code
   * lost}. Never called again before that.
   */
  void announce(DeviceStatus status);

  /** Sends one event; the listener hears {@code acknowledged(row)} or {@code lost}. */
  void send(long row, OutgoingEvent event);

  /** Says "offline" and disconnects; waits no longer than the limit. */
  void goodbye(Duration limit);

  /** Drops the connection without a word and without waiting; safe in every state. */
  void abandon();
}
