package dev.tankwright.cli;

import dev.tankwright.delivery.BackgroundBroker;
import dev.tankwright.delivery.BrokerEndpoints;
import dev.tankwright.delivery.DeliverySettings;
import dev.tankwright.delivery.RunDelivery;
import dev.tankwright.events.EventOrigin;
import dev.tankwright.events.HostMemory;
import dev.tankwright.events.mqtt.Timing;
import dev.tankwright.events.outbox.Continuation;
import dev.tankwright.events.outbox.Outbox;
import dev.tankwright.events.outbox.OutboxException;
import dev.tankwright.events.outbox.OutboxHealth;
import java.nio.file.Path;
import java.security.SecureRandom;
import java.time.Duration;

/** Opens a delivery for each run, as the option {@code --broker} asks. */
final class Deliveries implements AutoCloseable {
  /** How long a run waits for its events once the simulation is over. */
  static final Duration LIMIT = Duration.ofSeconds(8);

  private static final String NONE = "none";

  private final Timing timing = new Timing(System::nanoTime, new SecureRandom());
  private final BrokerEndpoints external;
  private final BackgroundBroker embedded;
  private final Outboxes outboxes;
  private long session;

  private Deliveries(BrokerEndpoints external, BackgroundBroker embedded, Outboxes outboxes) {
    this.external = external;
    this.embedded = embedded;
    this.outboxes = outboxes;
  }

  /**
   * Begins to get ready.
   *
   * @param broker where events go; an embedded broker when it names none
   * @param outbox the file that keeps them, or null for a temporary one
   */
  static Deliveries open(BrokerOptions broker, Path outbox) throws BadInputException {
    if (broker.broker() == null) {
      return new Deliveries(null, BackgroundBroker.start(), Outboxes.open(outbox));
    }
    if (!broker.broker().equals(NONE)) {
      return new Deliveries(broker.endpoints(System.getenv()), null, Outboxes.open(outbox));
    }
    if (outbox != null) {
      throw new BadInputException(
          "tankwright: --outbox: with --broker none nothing is sent, so nothing is kept; name a"
              + " broker, or omit --outbox");
    }
    return new Deliveries(null, null, null);
  }

  /**
   * What a run begins with.
   *
   * @param delivery takes its events
   * @param memory what the device's host knows from earlier runs in the same outbox
   * @param remark what to tell the user about that, or empty
   */
  record Begun(RunDelivery delivery, HostMemory memory, String remark) {}

  /** A delivery for the next run. */
  Begun begin(String device) throws BadInputException {
    session++;
    if (!publishes()) {
      return new Begun(RunDelivery.none(), HostMemory.NEW, "");
    }
    Outbox outbox = outboxes.next();
    try {
      HostMemory memory = Continuation.of(outbox, EventOrigin.sourceOf(device)).memory();
      String remark = remark(memory, outbox.health());
      DeliverySettings settings =
          DeliverySettings.of(session, timing).keeping(outbox, outboxes.lasts());
      return new Begun(begin(device, settings), memory, remark);
    } catch (OutboxException e) {
      outbox.close();
      throw new BadInputException("tankwright: --outbox: " + e.getMessage());
    }
  }

  private RunDelivery begin(String device, DeliverySettings settings) {
    return external != null
        ? RunDelivery.to(external, device, settings)
        : RunDelivery.through(embedded, device, settings);
  }

  private static String remark(HostMemory memory, OutboxHealth health) {
    if (health.committed() == 0) {
      return "";
    }
    long pending = health.committed() - health.acknowledged();
    return "the outbox continues after event %d%s"
        .formatted(
            memory.link().sequence(),
            pending == 0
                ? ""
                : "; %d pending events of earlier runs are sent first".formatted(pending));
  }

  /** How the broker is called in reports. */
  String brokerName() {
    if (external != null) {
      return external.publisher().toString();
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
    if (outboxes != null) {
      outboxes.close();
    }
  }
}
