package dev.tankwright.delivery;

import java.util.List;

/**
 * What became of a run's events.
 *
 * @param sent number of events offered
 * @param received what the subscriber got of them, first arrivals in order
 * @param undelivered ids of those it never got, in the order offered
 * @param doubled ids of those it got more than once; QoS 1 permits it, and a reader must cope
 * @param foreign number of events on the same topic that this run did not send
 * @param failure what was wrong and what would be right, or null if everything arrived
 */
public record DeliveryReport(
    int sent,
    List<ReceivedEvent> received,
    List<String> undelivered,
    List<String> doubled,
    int foreign,
    String failure) {
  /** Copies the lists. */
  public DeliveryReport {
    received = List.copyOf(received);
    undelivered = List.copyOf(undelivered);
    doubled = List.copyOf(doubled);
  }
}
