package dev.tankwright.cli;

import dev.tankwright.delivery.BackgroundBroker;
import dev.tankwright.delivery.DeliverySettings;
import dev.tankwright.delivery.RunDelivery;
import dev.tankwright.events.mqtt.BrokerUri;
import dev.tankwright.events.mqtt.Timing;
import java.net.URI;
import java.net.URISyntaxException;
import java.security.SecureRandom;
import java.time.Duration;

/** Opens a delivery for each run, as the option {@code --broker} asks. */
final class Deliveries implements AutoCloseable {
  /** How long a run waits for its events once the simulation is over. */
  static final Duration LIMIT = Duration.ofSeconds(8);

  private static final String NONE = "none";

  private final Timing timing = new Timing(System::nanoTime, new SecureRandom());
  private final URI external;
  private final BackgroundBroker embedded;
  private long session;

  private Deliveries(URI external, BackgroundBroker embedded) {
    this.external = external;
    this.embedded = embedded;
  }

  /**
   * Begins to get ready.
   *
   * @param broker a URI, {@code none}, or {@code null} for an embedded broker
   */
  static Deliveries open(String broker) throws BadInputException {
    if (broker == null) {
      return new Deliveries(null, BackgroundBroker.start());
    }
    return broker.equals(NONE) ? new Deliveries(null, null) : new Deliveries(uri(broker), null);
  }

  private static URI uri(String broker) throws BadInputException {
    try {
      URI uri = new URI(broker);
      BrokerUri.of(uri);
      return uri;
    } catch (URISyntaxException | IllegalArgumentException e) {
      throw new BadInputException("tankwright: --broker: " + e.getMessage());
    }
  }

  /** A delivery for the next run. */
  RunDelivery begin(String device) {
    session++;
    if (external != null) {
      return RunDelivery.to(external, device, DeliverySettings.of(session, timing));
    }
    return embedded == null
        ? RunDelivery.none()
        : RunDelivery.through(embedded, device, DeliverySettings.of(session, timing));
  }

  /** How the broker is called in reports. */
  String brokerName() {
    if (external != null) {
      return external.toString();
    }
    return embedded == null ? NONE : "embedded";
  }

  /** False when events go nowhere. */
  boolean publishes() {
    return external != null || embedded != null;
  }

  @Override
  public void close() {
    if (embedded != null) {
      embedded.close();
    }
  }
}
