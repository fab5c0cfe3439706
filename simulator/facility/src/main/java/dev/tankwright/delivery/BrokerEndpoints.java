package dev.tankwright.delivery;

import dev.tankwright.events.mqtt.BrokerAccess;

/**
 * How a run's publisher and the subscriber that checks it access the broker. The publisher
 * subscribes to nothing, so it needs no right to read; the subscriber needs no right to write.
 *
 * @param publisher for the device
 * @param reader for the run's own check
 */
public record BrokerEndpoints(BrokerAccess publisher, BrokerAccess reader) {
  /** The same for both. */
  public static BrokerEndpoints both(BrokerAccess access) {
    return new BrokerEndpoints(access, access);
  }
}
