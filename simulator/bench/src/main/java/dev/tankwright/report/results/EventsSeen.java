package dev.tankwright.report.results;

import java.util.List;

/**
 * What became of the run's events on their way to whoever listens. Immutable.
 *
 * @param published whether events were published at all
 * @param broker address of the broker, empty when nothing was published
 * @param sent how many events the controller's side committed for sending
 * @param received how many distinct events a listener received
 * @param undelivered ids of the events that were committed and not received, in the order of their
 *     sequence
 * @param doubled how many deliveries were repetitions of an event already received
 * @param failure one sentence why the delivery could not be watched to its end, empty when it was
 */
public record EventsSeen(
    boolean published,
    String broker,
    int sent,
    int received,
    List<String> undelivered,
    int doubled,
    String failure) {

  /** Copies the list. */
  public EventsSeen {
    undelivered = List.copyOf(undelivered);
  }

  /** Nothing was published: the run was made without a broker. */
  public static EventsSeen none() {
    return new EventsSeen(false, "", 0, 0, List.of(), 0, "");
  }

  /** True when everything that was sent arrived, or when nothing was to be published. */
  public boolean complete() {
    return failure.isEmpty() && undelivered.isEmpty() && (!published || received >= sent);
  }
}
