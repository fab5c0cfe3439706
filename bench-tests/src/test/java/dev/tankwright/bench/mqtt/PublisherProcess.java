package dev.tankwright.bench.mqtt;

import java.net.URI;
import java.nio.file.Path;

/**
 * A device as a process of its own that lets facts happen as fast as they leave, and says a dot for
 * every few that were acknowledged, until somebody kills it. Arguments: the outbox's file and the
 * broker's address.
 */
final class PublisherProcess {
  private static final int MOST_OWED = 60;
  private static final int ACKNOWLEDGED_FOR_A_DOT = 5;

  private PublisherProcess() {}

  public static void main(String[] args) throws Exception {
    try (Device device = new Device(Path.of(args[0]), URI.create(args[1]))) {
      System.out.print('u');
      System.out.flush();
      long dots = 0;
      while (System.in.available() == 0) {
        long owed =
            device.outbox.health().waiting()
                + device.outbox.health().committed()
                - device.outbox.health().acknowledged();
        if (owed < MOST_OWED) {
          device.happen(1);
        } else {
          Thread.onSpinWait();
        }
        if (device.outbox.acknowledged() / ACKNOWLEDGED_FOR_A_DOT > dots) {
          dots++;
          System.out.print('.');
          System.out.flush();
        }
      }
    }
  }
}
