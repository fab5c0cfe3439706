package dev.tankwright.events.mqtt;

import java.time.Duration;

/**
 * Gets the events of a queue to a broker, in order and at least once.
 *
 * <p>Threading: every method may be called from any thread. Only {@link #close} waits, and never
 * longer than its deadline and a short grace.
 */
public interface EventPublisher {
  /** What the retained status is to say from now on, whenever the device is online. */
  void status(DeviceStatus status);

  /**
   * Keeps the status "online" and queued events back, for instance while the reader at the far end
   * is away; connecting goes on.
   */
  void hold();

  /** Lets status and events leave again after {@link #hold}. */
  void resume();

  /** The last thing that went wrong, in plain words, or null. */
  String lastError();

  /**
   * Sends what is still queued, says "offline" and disconnects.
   *
   * @param deadline how long to wait for the broker's acknowledgements at most; zero waits for none
   * @return what was acknowledged and what was not
   */
  PublishReport close(Duration deadline);
}
