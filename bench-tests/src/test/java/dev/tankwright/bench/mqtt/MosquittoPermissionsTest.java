package dev.tankwright.bench.mqtt;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.tankwright.delivery.DeliveryReport;
import dev.tankwright.delivery.DeliverySettings;
import dev.tankwright.delivery.RunDelivery;
import dev.tankwright.events.mqtt.OutgoingEvent;
import dev.tankwright.events.mqtt.Timing;
import dev.tankwright.extent.Needs;
import dev.tankwright.extent.Service;
import java.time.Duration;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.extension.RegisterExtension;

/**
 * A broker that lets a client read and tell its status, but not publish events, still acknowledges
 * what it throws away: MQTT 3.1.1 has no way to refuse a publish (OASIS MQTT 3.1.1, 3.3.5). Only
 * the subscriber tells.
 */
@Timeout(180)
@Needs(Service.MOSQUITTO)
class MosquittoPermissionsTest {
  private static final DeliverySettings SETTINGS =
      DeliverySettings.of(1, new Timing(System::nanoTime, new Random()));

  @RegisterExtension
  final MosquittoBroker broker =
      new MosquittoBroker("topic read tankwright/#\ntopic write tankwright/+/status");

  @Test
  void tellsThatAcknowledgedEventsNeverArrived() {
    RunDelivery delivery = RunDelivery.to(broker.uri(), "bath-1", SETTINGS);
    delivery.offer(new OutgoingEvent("e1", "{\"id\":\"e1\"}".getBytes(UTF_8)));
    DeliveryReport report = delivery.finish(Duration.ofSeconds(60));
    assertEquals(List.of("e1"), report.undelivered());
    assertTrue(report.failure().contains("acknowledged 1"), report.failure());
    assertTrue(report.failure().contains("allow this client to publish"), report.failure());
  }
}
