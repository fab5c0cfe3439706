package dev.tankwright.bench.mqtt;

import java.net.URI;
import java.nio.file.Path;

/**
 * A device as a process of its own that lets facts happen as fast as they can be committed, until
 * somebody kills it. Arguments: the outbox's file and the broker's address.
 */
final class PublisherProcess {
  private static final int MOST_WAITING = 50;

  private PublisherProcess() {}

  public static void main(String[] args) throws Exception {
    try (Device device = new Device(Path.of(args[0]), URI.create(args[1]))) {
      System.out.println("up");
      while (System.in.available() == 0) {
        if (device.outbox.health().waiting() < MOST_WAITING) {
          device.happen(1);
        } else {
          Thread.onSpinWait();
        }
        if (device.outbox.health().committed() - device.outbox.health().acknowledged() > 500) {
          device.awaitDrained();
        }
      }
    }
  }
}
