package dev.tankwright.delivery;

import dev.tankwright.events.mqtt.DeviceStatus;
import dev.tankwright.events.mqtt.OutgoingEvent;
import java.time.Duration;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;

/** For runs whose events stay where they are. */
final class NoDelivery implements RunDelivery {
  private final AtomicInteger offered = new AtomicInteger();
  private volatile boolean finished;

  @Override
  public void offer(OutgoingEvent event, byte[] memory) {
    if (finished) {
      throw new IllegalStateException("event " + event.id() + " came after finish()");
    }
    offered.incrementAndGet();
  }

  @Override
  public void status(DeviceStatus status) {}

  @Override
  public int receivedSoFar() {
    return 0;
  }

  @Override
  public DeliveryReport finish(Duration limit) {
    finished = true;
    return new DeliveryReport(offered.get(), List.of(), List.of(), List.of(), 0, null);
  }
}
