package dev.tankwright.delivery;

import dev.tankwright.events.mqtt.Timing;
import java.time.Duration;

/**
 * What a run's delivery must be told besides broker and device.
 *
 * @param session number of the run, told in the device's status
 * @param timing clock and chance; never the simulation's own random numbers, or the network would
 *     change the run
 * @param connectTimeout for one attempt to connect
 * @param ackTimeout how long the broker may acknowledge nothing while something is owed
 * @param idleTimeout how long an acknowledged event may take to come back to the subscriber
 */
public record DeliverySettings(
    long session,
    Timing timing,
    Duration connectTimeout,
    Duration ackTimeout,
    Duration idleTimeout) {

  /** Patience that suits a broker on this machine or near it: 5 s, 10 s and 2 s. */
  public static DeliverySettings of(long session, Timing timing) {
    return new DeliverySettings(
        session, timing, Duration.ofSeconds(5), Duration.ofSeconds(10), Duration.ofSeconds(2));
  }
}
