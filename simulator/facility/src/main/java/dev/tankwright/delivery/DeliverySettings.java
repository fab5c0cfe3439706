package dev.tankwright.delivery;

import dev.tankwright.events.mqtt.Timing;
import dev.tankwright.events.outbox.Outbox;
import java.time.Duration;
import java.util.Optional;

/**
 * What a run's delivery must be told besides broker and device.
 *
 * @param session number of the run, told in the device's status
 * @param timing clock and chance; never the simulation's own random numbers, or the network would
 *     change the run
 * @param connectTimeout for one attempt to connect
 * @param ackTimeout how long the broker may acknowledge nothing while events are pending
 * @param idleTimeout how long an acknowledged event may take to come back to the subscriber
 * @param outbox where events are kept until they are acknowledged; empty for memory alone. It
 *     belongs to this delivery from now on, which closes it
 * @param lasting whether the outbox outlives the run, and so does the publisher's session with the
 *     broker
 */
public record DeliverySettings(
    long session,
    Timing timing,
    Duration connectTimeout,
    Duration ackTimeout,
    Duration idleTimeout,
    Optional<Outbox> outbox,
    boolean lasting) {

  /** Without an outbox: events are kept in memory. */
  public DeliverySettings(
      long session,
      Timing timing,
      Duration connectTimeout,
      Duration ackTimeout,
      Duration idleTimeout) {
    this(session, timing, connectTimeout, ackTimeout, idleTimeout, Optional.empty(), false);
  }

  /** Patience that suits a broker on this machine or near it: 5 s, 10 s and 2 s. */
  public static DeliverySettings of(long session, Timing timing) {
    return new DeliverySettings(
        session, timing, Duration.ofSeconds(5), Duration.ofSeconds(10), Duration.ofSeconds(2));
  }

  /** The same with events kept in an outbox; the session's number is then the outbox's. */
  public DeliverySettings keeping(Outbox file, boolean staysThere) {
    return new DeliverySettings(
        file.session(),
        timing,
        connectTimeout,
        ackTimeout,
        idleTimeout,
        Optional.of(file),
        staysThere);
  }
}
