package dev.tankwright.bench.mqtt;

import static org.awaitility.Awaitility.await;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.tankwright.events.mqtt.BrokerAccess;
import dev.tankwright.events.mqtt.BrokerUri;
import dev.tankwright.events.mqtt.EventPublisher;
import dev.tankwright.events.mqtt.MqttEventPublisher;
import dev.tankwright.events.mqtt.PublishReport;
import dev.tankwright.events.mqtt.PublisherConfig;
import dev.tankwright.events.mqtt.Timing;
import dev.tankwright.events.outbox.Outbox;
import dev.tankwright.events.outbox.OutboxException;
import dev.tankwright.events.outbox.OutboxSettings;
import java.net.URI;
import java.nio.file.Path;
import java.time.Duration;
import java.time.InstantSource;
import java.util.Random;

/** A device's way out: an outbox and a publisher, as one process of its life has them. */
final class Device implements AutoCloseable {
  static final String NAME = "bath-1";
  static final Timing TIMING = new Timing(System::nanoTime, new Random());

  final Outbox outbox;
  final EventPublisher publisher;
  private final ChainedEvents events;

  Device(Path file, URI broker) throws OutboxException {
    this(file, BrokerAccess.of(BrokerUri.of(broker)));
  }

  Device(Path file, BrokerAccess access) throws OutboxException {
    this(file, access, OutboxSettings.STANDARD, InstantSource.system());
  }

  Device(Path file, BrokerAccess access, OutboxSettings settings, InstantSource clock)
      throws OutboxException {
    outbox = Outbox.open(file, settings, clock);
    events = ChainedEvents.after(NAME, outbox.last());
    PublisherConfig config =
        PublisherConfig.forDevice(access, NAME, outbox.session())
            .withTimeouts(Duration.ofSeconds(2), Duration.ofSeconds(1));
    publisher = MqttEventPublisher.start(config, TIMING, outbox);
  }

  /** Lets so many facts happen. */
  void happen(int count) {
    for (int i = 0; i < count; i++) {
      assertTrue(outbox.append(events.next(200)), "the outbox had room");
    }
  }

  void awaitDrained() {
    await().atMost(Duration.ofSeconds(90)).until(outbox::isDrained);
  }

  PublishReport stop(Duration deadline) {
    PublishReport report = publisher.close(deadline);
    outbox.close();
    return report;
  }

  @Override
  public void close() {
    stop(Duration.ZERO);
  }
}
