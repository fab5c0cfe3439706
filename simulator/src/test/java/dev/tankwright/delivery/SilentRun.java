package dev.tankwright.delivery;

import java.time.Duration;

/** A whole program of its own that delivers some events and says nothing but how many arrived. */
final class SilentRun {
  private SilentRun() {}

  public static void main(String[] args) {
    RunDelivery delivery = RunDelivery.embedded("bath-1", DeliverySettings.of(1, Events.TIMING));
    Events.offer(delivery, Events.ids(0, 200));
    DeliveryReport report = delivery.finish(Duration.ofSeconds(60));
    System.out.print(report.received().size() + " arrived");
  }
}
