package dev.tankwright.delivery;

import dev.tankwright.events.mqtt.BrokerAccess;
import dev.tankwright.events.mqtt.BrokerUri;
import dev.tankwright.events.mqtt.DeviceStatus;
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
   * WorkerThreads over the next event and returns at once, also while the broker is still starting.
   *
   * @throws IllegalStateException after {@link #finish}
   */
  default void offer(OutgoingEvent event) {
    offer(event, null);
  }

  /**
   * The same, with what the host knows right after the event; an outbox keeps both together.
   *
   * @param memory in a form of the host's own, see {@link
   *     dev.tankwright.events.outbox.Outbox#append(OutgoingEvent, byte[])}; null for none
   * @throws IllegalStateException after {@link #finish}
   */
  void offer(OutgoingEvent event, byte[] memory);

  /** What the device's retained status is to say from now on; returns at once. */
  void status(DeviceStatus status);

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
    return LiveDelivery.begin(device, settings, places(broker), broker::close);
  }

  /** Through an embedded broker that outlives the run. */
  static RunDelivery through(BackgroundBroker broker, String device, DeliverySettings settings) {
    return LiveDelivery.begin(device, settings, places(broker), () -> {});
  }

  /**
   * Through a broker that is already running.
   *
   * @throws IllegalArgumentException if the URI is none, or is beyond this machine and in plain
   *     text, or the device id cannot be part of a topic; the message says what would be right
   */
  static RunDelivery to(URI broker, String device, DeliverySettings settings) {
    return to(BrokerEndpoints.both(BrokerAccess.of(BrokerUri.of(broker))), device, settings);
  }

  /**
   * Through a broker that is already running.
   *
   * @throws IllegalArgumentException if the device id cannot be part of a topic
   */
  static RunDelivery to(BrokerEndpoints places, String device, DeliverySettings settings) {
    return LiveDelivery.begin(device, settings, limit -> places, () -> {});
  }

  private static LiveDelivery.BrokerSource places(BackgroundBroker broker) {
    return limit -> BrokerEndpoints.both(BrokerAccess.of(broker.await(limit)));
  }

  /** Nowhere: counts what is offered and reports it neither received nor missing. */
  static RunDelivery none() {
    return new NoDelivery();
  }
}
