package dev.tankwright.events.mqtt;

import java.time.Duration;

/**
 * Takes cycle events and gets them to a broker, in order and at least once.
 *
 * <p>Threading: every method may be called from any thread. Only {@link #close} waits, and never
 * longer than its deadline and a short grace.
 */
public interface EventPublisher {
  /**
   * Queues one event behind those queued before and returns at once, whatever the network does.
   *
   * @throws IllegalStateException once {@link #close} has been called
   */
  void publish(OutgoingEvent event);

  /**
   * Keeps the status "online" and queued events back, for instance while the reader at the far end
   * is away; connecting goes on.
   */
  void hold();

  /** Lets status and events leave again after {@link #hold}. */
  void resume();

  /**
   * Sends what is still queued, says "offline" and disconnects.
   *
   * @param deadline how long to wait for the broker's acknowledgements at most; zero waits for none
   * @return what was acknowledged and what was not; a second call returns the same report
   */
  PublishReport close(Duration deadline);
}
