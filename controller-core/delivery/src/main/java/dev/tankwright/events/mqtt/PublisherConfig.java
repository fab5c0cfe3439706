package dev.tankwright.events.mqtt;

import java.time.Duration;

/**
 * Everything a publisher must be told.
 *
 * @param access where to, and how to get in
 * @param topics which device
 * @param session number of this run or power-on, told in the status; higher at every power-on
 * @param clientId the MQTT client id; stable for the publisher's life, so that a new connection
 *     takes over from a half-dead one and the old last will cannot arrive after the new "online"
 * @param keepSession whether the broker keeps this client's session between connections
 * @param window most events sent and not yet acknowledged, 1 to 1000
 * @param connectTimeout for one attempt, TCP and MQTT together; at least 1 ms
 * @param ackTimeout how long the broker may acknowledge nothing while events are pending
 * @param keepAlive the MQTT keep-alive, whole seconds
 * @param backoff waits between attempts
 */
public record PublisherConfig(
    BrokerAccess access,
    DeviceTopics topics,
    long session,
    String clientId,
    boolean keepSession,
    int window,
    Duration connectTimeout,
    Duration ackTimeout,
    Duration keepAlive,
    Backoff backoff) {

  /** Checks the ranges; throws {@link IllegalArgumentException}. */
  public PublisherConfig {
    if (window < 1 || window > 1000) {
      throw new IllegalArgumentException("window is " + window + "; it must be 1 to 1000");
    }
    if (clientId.isBlank()) {
      throw new IllegalArgumentException("client id is blank; give one that is stable and unique");
    }
    if (connectTimeout.toMillis() < 1 || ackTimeout.toMillis() < 1) {
      throw new IllegalArgumentException("connect and ack timeouts must be at least 1 ms");
    }
  }

  /** The broker's address. */
  public BrokerUri broker() {
    return access.uri();
  }

  /** The settings for a device that is on its own at this broker: stable id, kept session. */
  public static PublisherConfig forDevice(BrokerAccess access, String device, long session) {
    DeviceTopics topics = new DeviceTopics(device);
    return new PublisherConfig(
        access,
        topics,
        session,
        "tankwright-" + device,
        true,
        100,
        Duration.ofSeconds(5),
        Duration.ofSeconds(10),
        Duration.ofSeconds(20),
        Backoff.STANDARD);
  }

  /** The same with another client id whose session ends with its connection. */
  public PublisherConfig withPassingClient(String id) {
    return new PublisherConfig(
        access, topics, session, id, false, window, connectTimeout, ackTimeout, keepAlive, backoff);
  }

  /** The same with other patience. */
  public PublisherConfig withTimeouts(Duration connect, Duration ack) {
    return new PublisherConfig(
        access, topics, session, clientId, keepSession, window, connect, ack, keepAlive, backoff);
  }

  /** The same with another window. */
  public PublisherConfig withWindow(int events) {
    return new PublisherConfig(
        access,
        topics,
        session,
        clientId,
        keepSession,
        events,
        connectTimeout,
        ackTimeout,
        keepAlive,
        backoff);
  }
}
