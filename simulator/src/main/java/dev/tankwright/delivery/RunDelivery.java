package dev.tankwright.delivery;

import dev.tankwright.events.mqtt.BrokerUri;
import dev.tankwright.events.mqtt.OutgoingEvent;
import java.net.URI;
import java.time.Duration;

/**
 * Takes the events of one run to a broker and finds out what a subscriber got.
 *
 * <p>The subscription stands before the first event is published. Threading: {@link #offer} may be
 * called from any one thread and never waits; {@link #finish} waits within its limit.
 */
public interface RunDelivery {
  /**
   * Hands over the next event and returns at once, also while the broker is still starting.
   *
   * @throws IllegalStateException after {@link #finish}
   */
  void offer(OutgoingEvent event);

  /** How many different events have come back on the topic so far, foreign ones included. */
  int receivedSoFar();

  /**
   * Waits until all has been delivered, or the limit, then disconnects.
   *
   * @param limit for the broker's acknowledgements and the subscriber together; saying goodbye
   *     takes up to a few seconds more if the broker does not answer
   * @return the report; a second call returns the same
   */
  DeliveryReport finish(Duration limit);

  /** Through a broker of its own inside this process, gone after {@link #finish}. */
  static RunDelivery embedded(String device, DeliverySettings settings) {
    BackgroundBroker broker = BackgroundBroker.start();
    return LiveDelivery.begin(device, settings, broker::await, broker::close);
  }

  /** Through an embedded broker that outlives the run. */
  static RunDelivery through(BackgroundBroker broker, String device, DeliverySettings settings) {
    return LiveDelivery.begin(device, settings, broker::await, () -> {});
  }

  /**
   * Through a broker that is already running.
   *
   * @throws IllegalArgumentException if the URI is not {@code tcp://host[:port]}, or the device id
   *     cannot be part of a topic; the message says what would be right
   */
  static RunDelivery to(URI broker, String device, DeliverySettings settings) {
    BrokerUri address = BrokerUri.of(broker);
    return LiveDelivery.begin(device, settings, limit -> address, () -> {});
  }

  /** Nowhere: counts what is offered and reports it neither received nor missing. */
  static RunDelivery none() {
    return new NoDelivery();
  }
}
