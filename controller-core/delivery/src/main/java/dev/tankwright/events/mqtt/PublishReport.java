package dev.tankwright.events.mqtt;

import java.util.List;

/**
 * What became of the events given to a publisher.
 *
 * @param acknowledged number of events that the broker acknowledged
 * @param undelivered ids of the events it did not acknowledge, in the order they were given
 * @param lastError the last thing that went wrong, in plain words, or null; present also when a
 *     later attempt succeeded
 */
public record PublishReport(long acknowledged, List<String> undelivered, String lastError) {
  /** Copies the list. */
  public PublishReport {
    undelivered = List.copyOf(undelivered);
  }
}
