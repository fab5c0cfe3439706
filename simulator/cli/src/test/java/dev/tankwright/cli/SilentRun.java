package dev.tankwright.cli;

import static java.nio.charset.StandardCharsets.UTF_8;

import dev.tankwright.delivery.DeliveryReport;
import dev.tankwright.delivery.DeliverySettings;
import dev.tankwright.delivery.RunDelivery;
import dev.tankwright.events.mqtt.OutgoingEvent;
import dev.tankwright.events.mqtt.Timing;
import java.time.Duration;
import java.util.Random;

/** A whole program of its own that delivers some events and says nothing but how many arrived. */
final class SilentRun {
  private static final String EVENT =
      "{\"specversion\":\"1.0\",\"type\":\"test\",\"source\":\"/bath-1\",\"id\":\"%s\"}";

  private SilentRun() {}

  public static void main(String[] args) {
    Timing timing = new Timing(System::nanoTime, new Random());
    RunDelivery delivery = RunDelivery.embedded("bath-1", DeliverySettings.of(1, timing));
    for (int i = 0; i < 200; i++) {
      String id = "e" + i;
      delivery.offer(new OutgoingEvent(id, EVENT.formatted(id).getBytes(UTF_8)));
    }
    DeliveryReport report = delivery.finish(Duration.ofSeconds(60));
    System.out.print(report.received().size() + " arrived");
  }
}
